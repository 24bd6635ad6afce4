package io.github.tapwright.archive;

import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.sitting.live.Capture;
import io.github.tapwright.sitting.live.CaptureNotes;
import io.github.tapwright.sitting.live.LeftCapture;
import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.tap.TapSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;

/** A filled archive whose database can be damaged and read again, over and over. */
final class FuzzedArchive {

    private static final String COLUMNS =
            "SELECT m.name AS t, p.name AS c FROM sqlite_master m JOIN pragma_table_info(m.name) p"
                    + " WHERE m.type = 'table' AND m.name NOT LIKE 'sqlite%' ORDER BY 1, 2";

    private final Path folder;
    private final byte[] pristine;

    private FuzzedArchive(Path folder, byte[] pristine) {
        this.folder = folder;
        this.pristine = pristine;
    }

    /** The archive of an invented workshop: sittings of taps, and a recording nobody kept. */
    static FuzzedArchive in(Path parent) throws IOException {
        Path folder = parent.resolve("archive");
        try (Workshop workshop = Workshop.in(folder)) {
            workshop.add(TestWav.write(parent.resolve("a.wav"), 1));
            workshop.add(TestWav.write(parent.resolve("b.wav"), 2));
            CaptureNotes notes = new CaptureNotes(
                    Workshop.NUMBER,
                    new Procedure.BodyTaps(TapSettings.STANDARD),
                    Conditions.UNKNOWN,
                    "a microphone",
                    LiveFormat.STANDARD,
                    Workshop.CLOCK.instant());
            try (Capture capture = workshop.archive.captures().begin(notes)) {
                capture.id();
            }
        }
        return new FuzzedArchive(folder, Files.readAllBytes(new ArchiveFolder(folder).database()));
    }

    byte[] database() {
        return pristine.clone();
    }

    void put(byte[] database) throws IOException {
        Path file = new ArchiveFolder(folder).database();
        Files.deleteIfExists(file.resolveSibling(file.getFileName() + "-wal"));
        Files.deleteIfExists(file.resolveSibling(file.getFileName() + "-shm"));
        Files.write(file, database);
    }

    /** How many columns all tables have together. */
    int columnCount() {
        return columns().size();
    }

    private List<Column> columns() {
        try (Database database = Database.open(new ArchiveFolder(folder).database())) {
            return database.read(
                    connection -> Query.all(connection, COLUMNS, row -> new Column(row.text("t"), row.text("c"))));
        }
    }

    /** Puts a text into one column of a table, whatever belongs there; says which, if it changed anything. */
    Optional<String> setEveryRow(int which, String text) {
        List<Column> columns = columns();
        Column column = columns.get(which % columns.size());
        return setEveryRow(column.table(), column.name(), text);
    }

    /** The same by name. What the table itself refuses is left as it was. */
    Optional<String> setEveryRow(String table, String column, String text) {
        try (Database database = Database.open(new ArchiveFolder(folder).database())) {
            database.withoutTransaction("PRAGMA foreign_keys = OFF");
            return database.write(connection -> set(connection, table, column, text));
        }
    }

    private static Optional<String> set(Connection connection, String table, String column, String text) {
        try (var statement = connection.prepareStatement("UPDATE " + table + " SET " + column + " = ?")) {
            statement.setString(1, text);
            return statement.executeUpdate() == 0 ? Optional.empty() : Optional.of(table + "." + column);
        } catch (SQLException e) {
            return Optional.empty(); // a constraint stands in the way, as it should
        }
    }

    private record Column(String table, String name) {}

    /** Whatever a face of the program would ask for. */
    void readAll() {
        try (Archive archive = Archive.open(folder, Workshop.CLOCK)) {
            archive.verify(Progress.SILENT);
            archive.instruments().all();
            archive.instruments().shelf();
            archive.sittings().list(Optional.empty());
            archive.calibrations().all();
            archive.shop().latest();
            archive.listenings().all();
            archive.benchStudies().latest(Procedure.BodyTaps.KEY);
            for (SittingOutline outline : archive.sittings().outlines(Optional.empty())) {
                SittingId id = outline.id();
                archive.sittings().find(id);
                archive.sittings().corrected(id);
            }
            for (LeftCapture left : archive.captures().leftBehind()) {
                archive.captures().mend(left.id());
            }
        }
    }
}
