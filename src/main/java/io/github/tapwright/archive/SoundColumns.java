package io.github.tapwright.archive;

import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.Original;
import io.github.tapwright.sitting.SoundFacts;
import java.sql.SQLException;
import java.util.List;

/** A kept sound file and what reading it showed, as columns; its notices have a table of their own. */
final class SoundColumns {

    private SoundColumns() {}

    static Insert put(Insert row, KeptRecording recording) {
        SoundFacts facts = recording.facts();
        return row.put("sha256", recording.original().sha256())
                .put("file_name", recording.fileName())
                .put("format", facts.format())
                .put("sample_rate_hz", facts.sampleRateHz())
                .put("channel_count", facts.channelCount())
                .put("channel_used", facts.channelUsed())
                .put("duration_s", facts.durationSeconds());
    }

    /** The file of a row that was joined with its original. */
    static KeptRecording read(Row row, List<String> notices) throws SQLException {
        SoundFacts facts = new SoundFacts(
                row.text("format"),
                row.number("sample_rate_hz"),
                row.integer("channel_count"),
                row.integer("channel_used"),
                row.number("duration_s"),
                notices);
        Original original = new Original(row.text("sha256"), row.longInteger("size_bytes"), row.text("extension"));
        return new KeptRecording(original, row.text("file_name"), facts);
    }
}
