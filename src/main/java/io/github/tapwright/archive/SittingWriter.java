package io.github.tapwright.archive;

import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.GivenName;
import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.NewSitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SoundFacts;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;

/** Writes a sitting into its tables, inside one transaction. */
final class SittingWriter {

    private final Connection connection;

    SittingWriter(Connection connection) {
        this.connection = connection;
    }

    SittingId write(NewSitting sitting, List<KeptRecording> recordings) throws SQLException, IOException {
        long instrumentId = InstrumentTable.required(connection, sitting.instrument());
        long id = row(instrumentId, sitting).run(connection);
        for (int place = 0; place < recordings.size(); place++) {
            recording(id, place, recordings.get(place));
        }
        new AnalysisWriter(connection).write(id, 1, sitting.analysis());
        return new SittingId(id);
    }

    void name(SittingId id, int ordinal, GivenName name) throws SQLException {
        Insert.into("given_name")
                .put("sitting_id", id.number())
                .put("ordinal", ordinal)
                .put("frequency_hz", name.frequencyHz())
                .put("name", name.name())
                .put("given_at", name.givenAt())
                .run(connection);
    }

    private static Insert row(long instrumentId, NewSitting sitting) {
        Conditions conditions = sitting.conditions();
        Insert row = Insert.into("sitting")
                .put("instrument_id", instrumentId)
                .put("procedure", sitting.analysis().findings().procedure().key())
                .put("added_at", sitting.addedAt());
        return ConditionColumns.put(put(row, sitting.takenAt()), conditions);
    }

    static Insert put(Insert row, Moment takenAt) {
        return row.put("taken_at", takenAt.instant()).put("time_known", takenAt.timeKnown() ? 1 : 0);
    }

    private void recording(long sittingId, int place, KeptRecording recording) throws SQLException {
        OriginalTable.remember(connection, recording.original());
        Insert row = Insert.into("recording").put("sitting_id", sittingId).put("place", place);
        SoundColumns.put(row, recording).run(connection);
        SoundFacts facts = recording.facts();
        for (int i = 0; i < facts.notices().size(); i++) {
            Insert.into("recording_notice")
                    .put("sitting_id", sittingId)
                    .put("place", place)
                    .put("ordinal", i)
                    .put("notice", facts.notices().get(i))
                    .run(connection);
        }
    }
}
