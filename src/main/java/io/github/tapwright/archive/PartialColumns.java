package io.github.tapwright.archive;

import io.github.tapwright.note.Partial;
import io.github.tapwright.note.PartialDecay;
import java.sql.SQLException;
import java.util.Optional;

/** One partial of a note, its decay in one stage, in two, or refused. */
final class PartialColumns {

    private PartialColumns() {}

    static Insert put(Insert row, Partial partial) {
        row.put("number", partial.number());
        EstimateColumns.put(row, "frequency", "_hz", partial.frequencyHz());
        EstimateColumns.put(row, "level", "_db", partial.levelDb());
        row.put("harmonic_cents", partial.harmonicCents())
                .put("series_cents", partial.seriesCents())
                .put("fits_series", partial.fitsSeries() ? 1 : 0);
        if (partial.decay() instanceof PartialDecay.OneStage one) {
            EstimateColumns.put(row, "decay_time", "_s", one.decayTimeSeconds());
        } else if (partial.decay() instanceof PartialDecay.TwoStage two) {
            EstimateColumns.put(row, "decay_time", "_s", two.decayTimeSeconds());
            EstimateColumns.put(row, "early_time", "_s", two.earlyDecayTimeSeconds());
            EstimateColumns.put(row, "late_time", "_s", two.lateDecayTimeSeconds());
            EstimateColumns.put(row, "late_level", "_db", two.lateLevelDb());
            EstimateColumns.put(row, "beat", "_hz", two.beatHz());
            row.put("beats", two.beats() ? 1 : 0);
        } else {
            EstimateColumns.put(row, "decay_time", "_s", partial.decay().whole());
            row.put("refusal", partial.decay().reservation());
        }
        return row;
    }

    static Partial read(Row row) throws SQLException {
        return new Partial(
                row.integer("number"),
                EstimateColumns.read(row, "frequency", "_hz"),
                EstimateColumns.read(row, "level", "_db"),
                row.number("harmonic_cents"),
                row.number("series_cents"),
                row.integer("fits_series") == 1,
                decay(row));
    }

    private static PartialDecay decay(Row row) throws SQLException {
        Optional<String> refusal = row.optionalText("refusal");
        if (refusal.isPresent()) {
            return EstimateColumns.optional(row, "decay_time", "_s")
                    .<PartialDecay>map(whole -> new PartialDecay.Blended(whole, refusal.get()))
                    .orElseGet(() -> new PartialDecay.Refused(refusal.get()));
        }
        if (row.optionalNumber("late_time_s").isEmpty()) {
            return new PartialDecay.OneStage(EstimateColumns.read(row, "decay_time", "_s"));
        }
        return new PartialDecay.TwoStage(
                EstimateColumns.read(row, "early_time", "_s"),
                EstimateColumns.read(row, "late_time", "_s"),
                EstimateColumns.read(row, "late_level", "_db"),
                EstimateColumns.read(row, "decay_time", "_s"),
                EstimateColumns.read(row, "beat", "_hz"),
                row.integer("beats") == 1);
    }
}
