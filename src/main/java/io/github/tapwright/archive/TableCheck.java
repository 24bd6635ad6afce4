package io.github.tapwright.archive;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Looks whether the database is whole as a database, and whether every sitting has all its parts. */
final class TableCheck {

    private static final String SOUND = "ok";

    private TableCheck() {}

    /** What is wrong, one line each. */
    static List<String> problems(Connection connection) throws SQLException {
        List<String> problems = new ArrayList<>();
        Query.all(connection, "PRAGMA integrity_check", row -> row.text("integrity_check")).stream()
                .filter(line -> !line.equals(SOUND))
                .forEach(line -> problems.add("database: " + line));
        Query.all(connection, "PRAGMA foreign_key_check", row -> row.text("table")).stream()
                .distinct()
                .forEach(table -> problems.add("database: a row of " + table + " refers to something that is gone"));
        problems.addAll(lacking(connection, "TRUE", "recording", "recording"));
        for (Map.Entry<String, String> kind : AnalysisReader.TABLES.entrySet()) {
            problems.addAll(lacking(connection, "procedure = '" + kind.getKey() + "'", kind.getValue(), "analysis"));
        }
        problems.addAll(strange(connection));
        for (String table : TableSums.wrong(connection)) {
            problems.add("database: what stands in " + table + " is not what was written there");
        }
        return problems;
    }

    /** The sittings of a kind that have no row in the table of one of their parts. */
    private static List<String> lacking(Connection connection, String which, String table, String part)
            throws SQLException {
        return Query.all(
                connection,
                "SELECT id FROM sitting WHERE " + which + " AND id NOT IN (SELECT sitting_id FROM " + table + ")",
                row -> "database: sitting " + row.longInteger("id") + " has no " + part);
    }

    private static List<String> strange(Connection connection) throws SQLException {
        String known =
                AnalysisReader.TABLES.keySet().stream().map(k -> "'" + k + "'").collect(Collectors.joining(", "));
        return Query.all(
                connection,
                "SELECT id FROM sitting WHERE procedure NOT IN (" + known + ")",
                row -> "database: sitting " + row.longInteger("id") + " is of a kind this program does not know");
    }
}
