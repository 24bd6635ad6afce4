package io.github.tapwright.archive;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The current row of an answer; what is NULL there comes out as an empty Optional. */
final class Row {

    private final ResultSet rows;

    Row(ResultSet rows) {
        this.rows = rows;
    }

    /** Text that is always there. */
    String text(String column) throws SQLException {
        return required(column, rows.getString(column));
    }

    Optional<String> optionalText(String column) throws SQLException {
        return Optional.ofNullable(rows.getString(column));
    }

    /** One of a set of keys, or unknown; a key this program does not know is damage or a program's mistake. */
    <T> Optional<T> key(String column, Function<String, Optional<T>> find) throws SQLException {
        Optional<String> key = optionalText(column);
        Optional<T> value = key.flatMap(find);
        if (key.isPresent() && value.isEmpty()) {
            throw new ArchiveException(
                    "the archive holds \"" + key.get() + "\" as " + column + ", which this program does not know; use"
                            + " the program that wrote it, or restore a backup into a new folder");
        }
        return value;
    }

    /** One of a set of keys, always there. */
    <T> T requiredKey(String column, Function<String, Optional<T>> find) throws SQLException {
        return required(column, key(column, find).orElse(null));
    }

    double number(String column) throws SQLException {
        double value = rows.getDouble(column);
        return required(column, rows.wasNull() ? null : value);
    }

    Optional<Double> optionalNumber(String column) throws SQLException {
        double value = rows.getDouble(column);
        return rows.wasNull() ? Optional.empty() : Optional.of(value);
    }

    int integer(String column) throws SQLException {
        return Math.toIntExact(longInteger(column));
    }

    long longInteger(String column) throws SQLException {
        long value = rows.getLong(column);
        return required(column, rows.wasNull() ? null : value);
    }

    Optional<Integer> optionalInteger(String column) throws SQLException {
        int value = rows.getInt(column);
        return rows.wasNull() ? Optional.empty() : Optional.of(value);
    }

    Instant instant(String column) throws SQLException {
        return UtcText.parse(text(column));
    }

    Optional<byte[]> optionalBytes(String column) throws SQLException {
        return Optional.ofNullable(rows.getBytes(column));
    }

    byte[] bytes(String column) throws SQLException {
        return required(column, rows.getBytes(column));
    }

    private static <T> T required(String column, @Nullable T value) {
        if (value == null) {
            throw new ArchiveException(
                    "the archive lacks a value for " + column + "; run verify, and restore a backup into a new folder");
        }
        return value;
    }
}
