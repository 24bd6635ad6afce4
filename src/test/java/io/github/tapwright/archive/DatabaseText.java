package io.github.tapwright.archive;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** Everything a database keeps as lines of text, to compare what was with what is. */
final class DatabaseText {

    private DatabaseText() {}

    /** A line for each table's definition and for each row, in an order of their own. */
    static List<String> of(Path file) {
        try (Database database = Database.open(file)) {
            return database.read(DatabaseText::lines);
        } catch (ArchiveException e) {
            return List.of("cannot be read: " + e.getMessage());
        }
    }

    private static List<String> lines(Connection connection) throws SQLException {
        List<String> lines = rows(connection, "sqlite_schema", "type, name, tbl_name, sql");
        List<String> tables =
                Query.all(connection, "SELECT name FROM sqlite_schema WHERE type = 'table'", row -> row.text("name"));
        for (String table : tables) {
            lines.addAll(rows(connection, table, "*"));
        }
        Collections.sort(lines);
        return lines;
    }

    private static List<String> rows(Connection connection, String table, String columns) throws SQLException {
        List<String> lines = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("SELECT " + columns + " FROM " + table)) {
            while (rows.next()) {
                StringBuilder line = new StringBuilder(table);
                for (int c = 1; c <= rows.getMetaData().getColumnCount(); c++) {
                    Object value = rows.getObject(c);
                    line.append(" | ").append(value instanceof byte[] bytes ? Arrays.toString(bytes) : value);
                }
                lines.add(line.toString());
            }
        }
        return lines;
    }

    /** The first line that differs, as it is now. */
    static String difference(List<String> before, List<String> now) {
        List<String> changed = new ArrayList<>(now);
        changed.removeAll(before);
        String line = changed.isEmpty() ? "a line is gone" : changed.get(0);
        return line.substring(0, Math.min(line.length(), 160));
    }
}
