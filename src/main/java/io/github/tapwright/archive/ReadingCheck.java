package io.github.tapwright.archive;

import io.github.tapwright.sitting.SittingId;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/**
 * Checks every table, reads sittings, instruments, calibrations, listenings and the workshop's entry as the program
 * reads them, and names what cannot be read.
 *
 * <p>A database may be whole as a database and still hold a date that is none or a curve that is cut off. Recordings not
 * yet made into sittings, studies of the bench and what edits replaced are checked as tables alone.
 */
final class ReadingCheck {

    private final Database database;
    private final Originals originals;
    private final List<String> problems = new ArrayList<>();

    ReadingCheck(Database database, ArchiveFolder folder) {
        this.database = database;
        this.originals = new Originals(folder);
    }

    /** What is wrong, one line each. */
    List<String> problems() {
        tryOut("its tables cannot be checked", () -> problems.addAll(database.read(TableCheck::problems)));
        tryOut(
                "the list of sittings cannot be read",
                () -> database.read(ReadingCheck::sittings).forEach(this::sitting));
        tryOut("the instruments cannot be read", () -> new InstrumentTable(database).all());
        tryOut("the calibrations cannot be read", () -> new CalibrationTables(database, originals).all());
        tryOut("the listenings cannot be read", () -> new ListeningTables(database).all());
        tryOut("what the workshop says of itself cannot be read", () -> new ShopTable(database, originals).latest());
        return problems;
    }

    /** Each by itself: a question the damage leaves without an answer must not hide what the others find. */
    private void tryOut(String trouble, Runnable reading) {
        try {
            reading.run();
        } catch (ArchiveException e) {
            if (Trouble.willPass(e)) {
                throw e;
            }
            problems.add("database: " + trouble + ": " + e.getMessage());
        }
    }

    private static List<SittingId> sittings(Connection connection) throws SQLException {
        return Query.all(connection, "SELECT id FROM sitting ORDER BY id", row -> new SittingId(row.longInteger("id")));
    }

    private void sitting(SittingId id) {
        tryOut("sitting " + id + " cannot be read", () -> {
            database.read(connection -> new SittingReader(connection).find(id));
            if (database.read(connection -> TapDigestTable.isWrong(connection, id))) {
                problems.add("database: the digest of sitting " + id + " is not that of its results");
            }
        });
    }
}
