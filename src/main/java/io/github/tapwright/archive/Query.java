package io.github.tapwright.archive;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Asks the database and turns each row into a value. */
final class Query {

    private Query() {}

    /**
     * Turns the current row into a value.
     *
     * @param <T> the value
     */
    @FunctionalInterface
    interface RowReader<T> {

        T read(Row row) throws SQLException;
    }

    static <T> List<T> all(Connection connection, String sql, RowReader<T> reader, Object... parameters)
            throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int i = 0; i < parameters.length; i++) {
                statement.setObject(i + 1, parameters[i]);
            }
            List<T> values = new ArrayList<>();
            try (ResultSet rows = statement.executeQuery()) {
                Row row = new Row(rows);
                while (rows.next()) {
                    values.add(read(reader, row));
                }
            }
            return values;
        }
    }

    /** What a value of ours refuses was never written by this program: the row is damaged, not somebody's entry wrong. */
    private static <T> T read(RowReader<T> reader, Row row) throws SQLException {
        try {
            return reader.read(row);
        } catch (IllegalArgumentException | DateTimeException | ArithmeticException e) {
            throw new ArchiveException(
                    "the archive holds a value that cannot be right (" + e.getMessage()
                            + "); run verify, and restore a backup into a new folder",
                    e);
        }
    }

    static <T> Optional<T> one(Connection connection, String sql, RowReader<T> reader, Object... parameters)
            throws SQLException {
        return all(connection, sql, reader, parameters).stream().findFirst();
    }

    /** The rows of an analysis's table in the order of their ordinal. */
    static <T> List<T> children(Connection connection, String table, RowReader<T> reader, long analysisId)
            throws SQLException {
        return all(
                connection, "SELECT * FROM " + table + " WHERE analysis_id = ? ORDER BY ordinal", reader, analysisId);
    }

    /** The rows of an analysis's table by the ordinal of what they belong to, in the order of their key. */
    static <T> Map<Integer, List<T>> grouped(
            Connection connection, String table, String owner, RowReader<T> reader, long analysisId)
            throws SQLException {
        Map<Integer, List<T>> groups = new HashMap<>();
        String sql = "SELECT * FROM " + table + " WHERE analysis_id = ? ORDER BY 1, 2, 3"; // the key comes first
        all(
                connection,
                sql,
                row -> groups.computeIfAbsent(row.integer(owner), o -> new ArrayList<>())
                        .add(reader.read(row)),
                analysisId);
        return groups;
    }
}
