package io.github.tapwright.archive;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One row about to be written: columns and values side by side, so that they cannot slip against each other. */
final class Insert {

    private final String table;
    private final Map<String, @Nullable Object> values = new LinkedHashMap<>();

    private Insert(String table) {
        this.table = table;
    }

    static Insert into(String table) {
        return new Insert(table);
    }

    Insert put(String column, Object value) {
        values.put(column, value);
        return this;
    }

    /** Unknown becomes NULL. */
    Insert put(String column, Optional<?> value) {
        values.put(column, value.orElse(null));
        return this;
    }

    Insert put(String column, Instant value) {
        return put(column, UtcText.of(value));
    }

    /** Writes the row and gives its row number. */
    long run(Connection connection) throws SQLException {
        String sql = "INSERT INTO " + table + " (" + String.join(", ", values.keySet()) + ") VALUES ("
                + String.join(", ", marks()) + ")";
        boolean summed = TableSums.areKept(connection);
        try (PreparedStatement statement = connection.prepareStatement(sql + " RETURNING *")) {
            fill(statement, List.of());
            try (ResultSet rows = statement.executeQuery()) {
                TableSum written = TableSum.of(rows);
                if (summed) {
                    TableSums.change(connection, table, written);
                }
            }
        }
        try (PreparedStatement last = connection.prepareStatement("SELECT last_insert_rowid()");
                ResultSet row = last.executeQuery()) {
            row.next();
            return row.getLong(1);
        }
    }

    /** Changes the rows that have a value in a column; gives how many there were. */
    int updateWhere(Connection connection, String column, Object value) throws SQLException {
        String sql =
                "UPDATE " + table + " SET " + String.join(" = ?, ", values.keySet()) + " = ? WHERE " + column + " = ?";
        if (!TableSums.areKept(connection)) {
            return update(connection, sql, value);
        }
        TableSum before = TableSums.with(connection, table, column, value);
        long replaced = TableSums.lastReplaced(connection, table);
        int changed = update(connection, sql, value);
        TableSum after = TableSums.with(connection, table, column, value);
        TableSums.change(connection, table, after.minus(before));
        TableSums.changeByReplacedSince(connection, table, replaced);
        return changed;
    }

    private int update(Connection connection, String sql, Object where) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            fill(statement, List.of(where));
            return statement.executeUpdate();
        }
    }

    private void fill(PreparedStatement statement, List<Object> more) throws SQLException {
        int index = 1;
        for (Object value : values.values()) {
            statement.setObject(index++, value);
        }
        for (Object value : more) {
            statement.setObject(index++, value);
        }
    }

    private List<String> marks() {
        List<String> marks = new ArrayList<>();
        values.keySet().forEach(c -> marks.add("?"));
        return marks;
    }
}
