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

    private static Original original(Row row) throws SQLException {
        return new Original(row.text("sha256"), row.longInteger("size_bytes"), row.text("extension"));
    }
}
