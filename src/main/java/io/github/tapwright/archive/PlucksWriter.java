package io.github.tapwright.archive;

import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;

/** Writes the findings of plucks into their tables. */
final class PlucksWriter {

    private final Connection connection;

    PlucksWriter(Connection connection) {
        this.connection = connection;
    }

    void write(long sittingId, int number, Instant madeAt, PluckRun run) throws SQLException {
        long id = Insert.into("pluck_analysis")
                .put("sitting_id", sittingId)
                .put("number", number)
                .put("made_at", madeAt)
                .put("method_version", run.methodVersion())
                .put("fret_count", run.tuning().fretCount())
                .put("calibration_id", run.calibration().map(CalibrationId::number))
                .run(connection);
        OpenStringColumns.write(connection, "pluck_open_string", id, run.tuning());
        for (int i = 0; i < run.plucks().size(); i++) {
            pluck(id, i, run.plucks().get(i));
        }
    }

    private void pluck(long analysisId, int ordinal, Pluck pluck) throws SQLException {
        Insert.into("pluck")
                .put("analysis_id", analysisId)
                .put("ordinal", ordinal)
                .put("source", pluck.file())
                .put("attack_at_s", pluck.attackSeconds())
                .put("string", pluck.string())
                .put("lafmax_db", pluck.lafMaxDb())
                .put("momentary_max_lufs", pluck.momentaryMaxLufs())
                .put("maximum_sone", pluck.maximumSone())
                .run(connection);
        for (int i = 0; i < pluck.warnings().size(); i++) {
            Insert.into("pluck_warning")
                    .put("analysis_id", analysisId)
                    .put("pluck", ordinal)
                    .put("ordinal", i)
                    .put("warning", pluck.warnings().get(i))
                    .run(connection);
        }
    }
}
