package io.github.tapwright.archive;

import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the findings of plucks back from their tables. */
final class PlucksReader {

    private final Connection connection;

    PlucksReader(Connection connection) {
        this.connection = connection;
    }

    private record Head(
            long id,
            int number,
            Instant madeAt,
            String methodVersion,
            int fretCount,
            Optional<CalibrationId> calibration) {}

    List<Analysis> of(long sittingId) throws SQLException {
        List<Head> heads = Query.all(
                connection,
                "SELECT * FROM pluck_analysis WHERE sitting_id = ? ORDER BY number",
                PlucksReader::head,
                sittingId);
        Map<Long, OutOfUse> withdrawn = OutOfUseTable.CALIBRATIONS.all(connection);
        List<Analysis> analyses = new ArrayList<>();
        for (Head head : heads) {
            PluckRun run = new PluckRun(
                    plucks(head.id()),
                    OpenStringColumns.read(connection, "pluck_open_string", head.id(), head.fretCount()),
                    head.calibration(),
                    head.methodVersion(),
                    head.calibration().flatMap(id -> Optional.ofNullable(withdrawn.get(id.number()))));
            analyses.add(new Analysis(head.number(), head.madeAt(), new Findings.OfPlucks(run)));
        }
        return analyses;
    }

    private static Head head(Row row) throws SQLException {
        return new Head(
                row.longInteger("id"),
                row.integer("number"),
                row.instant("made_at"),
                row.text("method_version"),
                row.integer("fret_count"),
                row.optionalInteger("calibration_id").map(CalibrationId::new));
    }

    private List<Pluck> plucks(long analysisId) throws SQLException {
        Map<Integer, List<String>> warnings =
                Query.grouped(connection, "pluck_warning", "pluck", row -> row.text("warning"), analysisId);
        return Query.all(
                connection,
                "SELECT * FROM pluck WHERE analysis_id = ? ORDER BY ordinal",
                row -> new Pluck(
                        row.integer("source"),
                        row.number("attack_at_s"),
                        row.optionalInteger("string"),
                        row.optionalNumber("lafmax_db"),
                        row.optionalNumber("momentary_max_lufs"),
                        row.optionalNumber("maximum_sone"),
                        warnings.getOrDefault(row.integer("ordinal"), List.of())),
                analysisId);
    }
}
