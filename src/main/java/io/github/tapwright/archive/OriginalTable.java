package io.github.tapwright.archive;

import io.github.tapwright.sitting.Original;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;

/** The originals the database refers to. */
final class OriginalTable {

    private OriginalTable() {}

    static List<Original> all(Connection connection) throws SQLException {
        return Query.all(connection, "SELECT * FROM original ORDER BY sha256", OriginalTable::original);
    }

    /** Notes that something refers to an original; several things may refer to one. */
    static void remember(Connection connection, Original original) throws SQLException {
        boolean known = Query.one(
                        connection,
                        "SELECT 1 AS one FROM original WHERE sha256 = ?",
                        row -> row.integer("one"),
                        original.sha256())
                .isPresent();
        if (!known) {
            Insert.into("original")
                    .put("sha256", original.sha256())
                    .put("size_bytes", original.sizeBytes())
                    .put("extension", original.extension())
                    .run(connection);
        }
    }

    private static Original original(Row row) throws SQLException {
        return new Original(row.text("sha256"), row.longInteger("size_bytes"), row.text("extension"));
    }
}
