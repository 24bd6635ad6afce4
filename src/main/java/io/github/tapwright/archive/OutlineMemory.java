package io.github.tapwright.archive;

import io.github.tapwright.sitting.SittingOutline;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;

/**
 * The outlines of all sittings, read once and remembered until the database changes: one question to ten thousand
 * sittings is seldom the only one.
 */
final class OutlineMemory {

    /** What SQLite counts of commits by other programs, and of rows changed by this one. */
    private record Version(long others, long own) {}

    private Optional<Version> version = Optional.empty();
    private List<SittingOutline> outlines = List.of();

    /** Inside a transaction, so that nothing changes between the question for the version and the reading. */
    synchronized List<SittingOutline> all(Connection connection) throws SQLException {
        Optional<Version> now = Optional.of(new Version(
                number(connection, "PRAGMA data_version", "data_version"),
                number(connection, "SELECT total_changes() AS changes", "changes")));
        if (!now.equals(version)) {
            outlines = List.copyOf(OutlineReader.of(connection, Optional.empty()));
            version = now;
        }
        return outlines;
    }

    private static long number(Connection connection, String sql, String column) throws SQLException {
        return Query.one(connection, sql, row -> row.longInteger(column)).orElseThrow();
    }
}
