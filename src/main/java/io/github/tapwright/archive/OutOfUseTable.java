package io.github.tapwright.archive;

import io.github.tapwright.sitting.OutOfUse;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What the maker took out of use, and back; the word said last holds, whatever the clock said.
 *
 * @param table its name
 * @param key the column that says of what
 */
record OutOfUseTable(String table, String key) {

    static final OutOfUseTable SITTINGS = new OutOfUseTable("sitting_set_aside", "sitting_id");

    static final OutOfUseTable CALIBRATIONS = new OutOfUseTable("calibration_withdrawn", "calibration_id");

    private record Entry(long id, OutOfUse why) {}

    /** A query for the numbers of all that is out of use. */
    String ids() {
        return "SELECT " + key + latest();
    }

    private String latest() {
        return " FROM " + table + " o WHERE reason IS NOT NULL AND ordinal = (SELECT max(ordinal) FROM " + table
                + " l WHERE l." + key + " = o." + key + ")";
    }

    /** All that is out of use, by its number. */
    Map<Long, OutOfUse> all(Connection connection) throws SQLException {
        return Query.all(connection, "SELECT *" + latest(), this::entry).stream()
                .collect(Collectors.toMap(Entry::id, Entry::why));
    }

    private Entry entry(Row row) throws SQLException {
        return new Entry(row.longInteger(key), new OutOfUse(row.text("reason"), row.instant("said_at")));
    }

    /** Notes what the maker said; without a reason the thing is in use again. */
    long say(Connection connection, long id, Optional<String> reason, Instant at) throws SQLException {
        int ordinal = 1
                + Query.one(
                                connection,
                                "SELECT max(ordinal) AS n FROM " + table + " WHERE " + key + " = ?",
                                row -> row.optionalInteger("n"),
                                id)
                        .flatMap(Function.identity())
                        .orElse(0);
        return Insert.into(table)
                .put(key, id)
                .put("ordinal", ordinal)
                .put("reason", reason)
                .put("said_at", at)
                .run(connection);
    }
}
