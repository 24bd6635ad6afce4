package io.github.tapwright.archive;

import io.github.tapwright.note.run.Tuning;
import java.sql.Connection;
import java.sql.SQLException;

/** A tuning: one row for each open string, and the number of frets beside the analysis. */
final class OpenStringColumns {

    private OpenStringColumns() {}

    static void write(Connection connection, String table, long analysisId, Tuning tuning) throws SQLException {
        for (int string = 1; string <= tuning.openHz().size(); string++) {
            Insert.into(table)
                    .put("analysis_id", analysisId)
                    .put("string", string)
                    .put("hz", tuning.openHz().get(string - 1))
                    .run(connection);
        }
    }

    static Tuning read(Connection connection, String table, long analysisId, int fretCount) throws SQLException {
        String sql = "SELECT hz FROM " + table + " WHERE analysis_id = ? ORDER BY string";
        return new Tuning(Query.all(connection, sql, row -> row.number("hz"), analysisId), fretCount);
    }
}
