package io.github.tapwright.archive;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Keeps in {@code table_sum} what every table should add up to, and compares. */
final class TableSums {

    private static final String OWN = "table_sum";
    private static final String SCHEMA = "sqlite_schema";

    private TableSums() {}

    /** Archives of older versions have none, also while they are brought up to date. */
    static boolean areKept(Connection connection) throws SQLException {
        return exists(connection, OWN);
    }

    private static boolean exists(Connection connection, String table) throws SQLException {
        return Query.one(
                        connection,
                        "SELECT 1 AS one FROM sqlite_schema WHERE type = 'table' AND name = ?",
                        row -> row.integer("one"),
                        table)
                .isPresent();
    }

    /** Notes that rows have come, or changed: what they add up to now less what they added up to before. */
    static void change(Connection connection, String table, TableSum by) throws SQLException {
        String sql = "UPDATE table_sum SET row_count = row_count + ?, high = (high + ?) & 2147483647,"
                + " low = (low + ?) & 2147483647 WHERE name = ?";
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            statement.setLong(1, by.rowCount());
            statement.setLong(2, by.high());
            statement.setLong(3, by.low());
            statement.setString(4, table);
            statement.executeUpdate();
        }
    }

    /** Rows of a table with a value in a column. */
    static TableSum with(Connection connection, String table, String column, Object value) throws SQLException {
        return where(connection, table, column + " = ?", value);
    }

    private static TableSum where(Connection connection, String table, String condition, Object value)
            throws SQLException {
        try (PreparedStatement statement =
                connection.prepareStatement("SELECT * FROM " + table + " WHERE " + condition)) {
            statement.setObject(1, value);
            try (ResultSet rows = statement.executeQuery()) {
                return TableSum.of(rows);
            }
        }
    }

    /** Number of the last row that a trigger put aside when an update replaced it; 0 if there is none. */
    static long lastReplaced(Connection connection, String table) throws SQLException {
        return exists(connection, history(table))
                ? Query.one(
                                connection,
                                "SELECT coalesce(max(id), 0) AS last FROM " + history(table),
                                row -> row.longInteger("last"))
                        .orElse(0L)
                : 0;
    }

    /** Notes the rows put aside since, and no others: a history grows with every edit. */
    static void changeByReplacedSince(Connection connection, String table, long last) throws SQLException {
        if (exists(connection, history(table))) {
            change(connection, history(table), where(connection, history(table), "id > ?", last));
        }
    }

    private static String history(String table) {
        return table + "_before";
    }

    /** Sums everything anew, after a migration changed the tables themselves. */
    static void renew(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute("DELETE FROM " + OWN);
        }
        String sql = "INSERT INTO table_sum (name, row_count, high, low) VALUES (?, ?, ?, ?)";
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (String table : tables(connection)) {
                TableSum sum = now(connection, table);
                statement.setString(1, table);
                statement.setLong(2, sum.rowCount());
                statement.setLong(3, sum.high());
                statement.setLong(4, sum.low());
                statement.executeUpdate();
            }
        }
    }

    /** The tables that do not add up to what was written, and those one of the two knows nothing of. */
    static List<String> wrong(Connection connection) throws SQLException {
        List<String> wrong = new ArrayList<>();
        List<String> kept = new ArrayList<>(
                Query.all(connection, "SELECT name FROM table_sum ORDER BY name", row -> row.text("name")));
        for (String table : tables(connection)) {
            boolean right = Query.one(
                            connection,
                            "SELECT * FROM table_sum WHERE name = ?",
                            row -> new TableSum(
                                    row.longInteger("row_count"), row.longInteger("high"), row.longInteger("low")),
                            table)
                    .equals(Optional.of(now(connection, table)));
            if (!right) {
                wrong.add(table);
            }
            kept.remove(table);
        }
        wrong.addAll(kept);
        return wrong;
    }

    private static TableSum now(Connection connection, String table) throws SQLException {
        String what = table.equals(SCHEMA)
                ? "type, name, tbl_name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite_%'"
                : "* FROM " + table;
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("SELECT " + what)) {
            return TableSum.of(rows);
        }
    }

    private static List<String> tables(Connection connection) throws SQLException {
        List<String> tables = new ArrayList<>(Query.all(
                connection,
                "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name <> ?"
                        + " ORDER BY name",
                row -> row.text("name"),
                OWN));
        tables.add(SCHEMA);
        return tables;
    }
}
