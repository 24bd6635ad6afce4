package io.github.tapwright.archive;

import io.github.tapwright.instrument.RefusedEntryException;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.DateTimeException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.JournalMode;
import org.sqlite.SQLiteConfig.SynchronousMode;

/**
 * One connection to the archive's database, used by one thread at a time.
 *
 * <p>A write takes the write lock at its start, so that it waits for another program instead of failing half
 * way; a read sees one state of the database throughout.
 */
final class Database implements AutoCloseable {

    /** Long enough for another program's largest transaction, short enough for a waiting maker. */
    private static final int BUSY_TIMEOUT_MILLIS = 15_000;

    private final Path file;
    private final Connection connection;

    private Database(Path file, Connection connection) {
        this.file = file;
        this.connection = connection;
    }

    static Database open(Path file) {
        return open(file, BUSY_TIMEOUT_MILLIS);
    }

    static Database open(Path file, int busyTimeoutMillis) {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(busyTimeoutMillis);
        config.enforceForeignKeys(true);
        config.setSynchronous(SynchronousMode.FULL);
        try {
            Connection connection = config.createConnection("jdbc:sqlite:" + file);
            return new Database(file, connection);
        } catch (SQLException e) {
            throw Trouble.with(file, e);
        }
    }

    Path file() {
        return file;
    }

    /** Lets readers and a writer work side by side; a lasting property of the file. */
    void useWriteAheadLog() {
        withoutTransaction("PRAGMA journal_mode = " + JournalMode.WAL);
    }

    synchronized void withoutTransaction(String sql) {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException e) {
            throw Trouble.with(file, e);
        }
    }

    /** Writes one consistent state of this database to a new file. */
    synchronized void vacuumInto(Path copy) {
        try (Statement statement = connection.createStatement()) {
            statement.execute("VACUUM INTO '" + copy.toString().replace("'", "''") + "'");
        } catch (SQLException e) {
            throw Trouble.withCopy(file, copy, e);
        }
    }

    /** What was refused on its way in cannot be in the archive: if it comes out, something has changed it. */
    synchronized <T> T read(SqlWork<T> work) {
        try {
            return inside("BEGIN DEFERRED", work);
        } catch (RefusedEntryException theMakersOwn) {
            throw theMakersOwn;
        } catch (IllegalArgumentException | DateTimeException | ArithmeticException | IndexOutOfBoundsException e) {
            throw Trouble.with(file, e);
        }
    }

    synchronized <T> T write(SqlWork<T> work) {
        return inside("BEGIN IMMEDIATE", work);
    }

    private <T> T inside(String begin, SqlWork<T> work) {
        try (Statement statement = connection.createStatement()) {
            statement.execute(begin);
            boolean committed = false;
            try {
                T result = work.run(connection);
                statement.execute("COMMIT");
                committed = true;
                return result;
            } finally {
                if (!committed) {
                    rollBack(statement);
                }
            }
        } catch (SQLException e) {
            throw Trouble.with(file, e);
        } catch (IOException e) {
            throw Trouble.with(file, e);
        }
    }

    private static void rollBack(Statement statement) {
        try {
            statement.execute("ROLLBACK");
        } catch (SQLException e) {
            // SQLite has rolled back by itself, for instance on a full disk; the first failure tells the story.
            return;
        }
    }

    @Override
    public synchronized void close() {
        try {
            connection.close();
        } catch (SQLException e) {
            throw Trouble.with(file, e);
        }
    }
}
