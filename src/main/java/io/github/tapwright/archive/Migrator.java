package io.github.tapwright.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.UUID;

/** Brings an archive's database to the program's version, one step after another, each in a transaction. */
final class Migrator {

    /** "TPWR" in ASCII: tells an archive's database from any other SQLite file. */
    private static final int APPLICATION_ID = 0x54505752;

    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss").withZone(ZoneOffset.UTC);

    private final List<Migration> migrations;
    private final Clock clock;

    Migrator(List<Migration> migrations, Clock clock) {
        this.migrations = List.copyOf(migrations);
        this.clock = clock;
    }

    void migrate(Database database, Path backups) {
        boolean isNew = version(database) == 0;
        for (Migration migration : migrations) {
            int version = version(database);
            if (version < migration.version()) {
                if (!isNew) {
                    backUp(database, backups, version);
                }
                database.write(connection -> apply(connection, migration));
            }
        }
    }

    private int version(Database database) {
        int newest = migrations.get(migrations.size() - 1).version();
        return database.read(connection -> {
            int version = pragma(connection, "user_version");
            boolean ours = pragma(connection, "application_id") == APPLICATION_ID;
            boolean blank = pragma(connection, "schema_version") == 0;
            if (!ours && !blank) {
                throw new ArchiveException("the database " + database.file()
                        + " was not made by this program; choose an archive or an empty folder");
            }
            if (version > newest) {
                throw new ArchiveException("the archive " + database.file() + " has version " + version
                        + ", this program knows up to " + newest + "; use the newer program that wrote it");
            }
            return version;
        });
    }

    /** Repeats the look at the version under the write lock: another program may have been faster. */
    private static boolean apply(Connection connection, Migration migration) throws SQLException, IOException {
        if (pragma(connection, "user_version") >= migration.version()) {
            return false;
        }
        try (Statement statement = connection.createStatement()) {
            for (String sql : migration.statements()) {
                statement.execute(sql);
            }
            migration.filling().run(connection);
            if (TableSums.areKept(connection)) {
                TableSums.renew(connection);
            }
            statement.execute("PRAGMA application_id = " + APPLICATION_ID);
            statement.execute("PRAGMA user_version = " + migration.version());
        }
        return true;
    }

    private void backUp(Database database, Path backups, int version) {
        String name = "before-leaving-version-" + version + "-" + STAMP.format(clock.instant());
        Path target = backups.resolve(name + "-" + UUID.randomUUID().toString().substring(0, 8) + ".db");
        try {
            Files.createDirectories(backups);
            Durable.write(target, database::vacuumInto);
        } catch (IOException e) {
            throw Trouble.with(target, e);
        }
    }

    private static int pragma(Connection connection, String name) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("PRAGMA " + name)) {
            row.next();
            return row.getInt(1);
        }
    }
}
