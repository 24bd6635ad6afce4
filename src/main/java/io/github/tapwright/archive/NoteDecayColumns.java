package io.github.tapwright.archive;

import io.github.tapwright.note.DecayRange;
import io.github.tapwright.note.DecayTime;
import io.github.tapwright.note.Finding;
import io.github.tapwright.note.WholeDecay;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The decay times of a whole note: a row for each range, with its time or the reason why there is none. */
final class NoteDecayColumns {

    private NoteDecayColumns() {}

    /** One range of one note. */
    record Line(DecayRange range, Finding<DecayTime> time) {}

    static void write(Connection connection, long analysisId, int note, WholeDecay decay) throws SQLException {
        Map<DecayRange, Finding<DecayTime>> times = new EnumMap<>(DecayRange.class);
        times.put(DecayRange.EDT, decay.early());
        times.put(DecayRange.T20, decay.t20());
        times.put(DecayRange.T30, decay.t30());
        for (Map.Entry<DecayRange, Finding<DecayTime>> time : times.entrySet()) {
            Insert row = Insert.into("note_decay")
                    .put("analysis_id", analysisId)
                    .put("note", note)
                    .put("range", time.getKey().name());
            EstimateColumns.put(row, "decay_time", "_s", time.getValue().found().map(DecayTime::seconds));
            row.put("non_linearity_per_mille", time.getValue().found().map(DecayTime::nonLinearityPerMille))
                    .put("refusal", time.getValue().refusal())
                    .run(connection);
        }
    }

    static Line read(Row row) throws SQLException {
        DecayRange range = row.requiredKey(
                "range",
                key -> Arrays.stream(DecayRange.values())
                        .filter(r -> r.name().equals(key))
                        .findFirst());
        Finding<DecayTime> time = row.optionalText("refusal").isPresent()
                ? new Finding.NotFound<>(row.text("refusal"))
                : new Finding.Found<>(new DecayTime(
                        range, EstimateColumns.read(row, "decay_time", "_s"), row.number("non_linearity_per_mille")));
        return new Line(range, time);
    }

    static WholeDecay join(List<Line> lines, double heardDb) {
        return new WholeDecay(of(lines, DecayRange.EDT), of(lines, DecayRange.T20), of(lines, DecayRange.T30), heardDb);
    }

    private static Finding<DecayTime> of(List<Line> lines, DecayRange range) {
        return lines.stream()
                .filter(l -> l.range() == range)
                .map(Line::time)
                .findFirst()
                .orElseThrow(() -> new ArchiveException("the archive lacks the " + range
                        + " of a note; run verify, and restore a backup into a new folder"));
    }
}
