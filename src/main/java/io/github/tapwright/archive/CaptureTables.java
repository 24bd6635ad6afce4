package io.github.tapwright.archive;

import io.github.tapwright.archive.VerifyReport.WaitingRecording;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.sitting.Original;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.live.Capture;
import io.github.tapwright.sitting.live.CaptureId;
import io.github.tapwright.sitting.live.CaptureNotes;
import io.github.tapwright.sitting.live.CaptureStore;
import io.github.tapwright.sitting.live.LeftCapture;
import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.sitting.live.Loss;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Live recordings: their sound in the folder {@code captures}, what is known about them in the database. */
final class CaptureTables implements CaptureStore {

    private static final String WAITING = "waiting";
    private static final String KEPT = "kept";
    private static final String NEVER_BEGUN = "never-begun";
    /** As {@link #name} makes them, and older programs may have. */
    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{Nd}_-][\\p{L}\\p{Nd}._ -]*\\.wav");

    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss").withZone(ZoneOffset.UTC);

    private final Database database;
    private final ArchiveFolder folder;
    private final Set<CaptureId> brokenOff;

    /** Takes the recordings of this program that ended without a word in the database, as on a full disk. */
    CaptureTables(Database database, ArchiveFolder folder, Set<CaptureId> brokenOff) {
        this.database = database;
        this.folder = folder;
        this.brokenOff = brokenOff;
    }

    /** A row that waits, and who was writing it. */
    private record Waiting(CaptureId id, CaptureNotes notes, Path file, Optional<String> writer, List<Loss> losses) {}

    @Override
    public Capture begin(CaptureNotes notes) {
        CaptureId id = database.write(connection -> new CaptureId(CaptureColumns.put(
                        Insert.into("capture")
                                .put("instrument_id", InstrumentTable.required(connection, notes.instrument()))
                                .put("file_name", "")
                                .put("state", WAITING)
                                .put("writer", Writer.self().text()),
                        notes)
                .run(connection)));
        Path file = folder.captures().resolve(name(id, notes));
        database.write(connection -> Insert.into("capture")
                .put("file_name", String.valueOf(file.getFileName()))
                .updateWhere(connection, "id", id.number()));
        try {
            return new RunningCapture(database, id, file, create(file, notes.format()), brokenOff);
        } catch (IOException e) {
            throw neverBegun(id, Trouble.with(file, e));
        } catch (ArchiveException e) {
            throw neverBegun(id, e);
        }
    }

    private CaptureFile create(Path file, LiveFormat format) throws IOException {
        if (Files.exists(folder.captures()) && !Files.isDirectory(folder.captures())) {
            throw new ArchiveException(
                    folder.captures() + " is a file, and recordings need a folder of that name; move the file"
                            + " away, then record again");
        }
        Files.createDirectories(folder.captures());
        return CaptureFile.create(file, format);
    }

    /** No sound ever came: the row must not wait for it, nor this program count as writing it. */
    private ArchiveException neverBegun(CaptureId id, ArchiveException why) {
        brokenOff.add(id);
        try {
            end(id, NEVER_BEGUN);
        } catch (ArchiveException e) {
            why.addSuppressed(e);
        }
        return why;
    }

    /** A name that tells the maker what it is, unique by its number. */
    private static String name(CaptureId id, CaptureNotes notes) {
        String instrument = notes.instrument().text().replaceAll("[^\\p{L}\\p{Nd}-]+", "_");
        return instrument + "-" + notes.procedure().key() + "-" + WHEN.format(notes.startedAt()) + "-" + id + ".wav";
    }

    @Override
    public List<LeftCapture> leftBehind() {
        List<LeftCapture> left = new ArrayList<>();
        for (Waiting row : database.read(connection -> rows(connection, "TRUE"))) {
            left(row).ifPresent(left::add);
        }
        return left;
    }

    /** All that waits with its file, those among it that are being written, too. */
    List<WaitingRecording> waiting() throws IOException {
        List<WaitingRecording> waiting = new ArrayList<>();
        for (Waiting row : database.read(connection -> rows(connection, "TRUE"))) {
            if (Files.isRegularFile(row.file())) {
                Path path = folder.root().relativize(row.file());
                waiting.add(new WaitingRecording(row.id(), path, isBeingWritten(row)));
            }
        }
        return waiting;
    }

    private List<Waiting> rows(Connection connection, String which) throws SQLException {
        return Query.all(
                connection,
                "SELECT c.*, i.shop_number FROM capture c JOIN instrument i ON i.id = c.instrument_id WHERE c.state = '"
                        + WAITING + "' AND " + which + " ORDER BY c.started_at, c.id",
                row -> new Waiting(
                        new CaptureId(row.longInteger("id")),
                        CaptureColumns.read(row),
                        file(row.text("file_name")),
                        row.optionalText("writer"),
                        losses(connection, row.longInteger("id"))));
    }

    /**
     * The database may come from a backup somebody else made: a name in it must not lead to a file elsewhere, which
     * would be mended, moved or deleted as if it were a recording. No name yet is what a crash leaves at the very start.
     */
    private Path file(String name) {
        if (!name.isEmpty() && !NAME.matcher(name).matches()) {
            throw new ArchiveException("the archive lists a recording under \"" + name + "\", which is no name this"
                    + " program gives; restore another backup into a new folder");
        }
        return folder.captures().resolve(name);
    }

    private static List<Loss> losses(Connection connection, long id) throws SQLException {
        return Query.all(
                connection,
                "SELECT * FROM capture_loss WHERE capture_id = ? ORDER BY ordinal",
                row -> new Loss(row.number("at_s"), row.longInteger("frames"), row.text("reason")),
                id);
    }

    /** Empty if the recording is being written, or its file is not here, as in a restored backup. */
    private Optional<LeftCapture> left(Waiting row) {
        try {
            if (!Files.isRegularFile(row.file()) || isBeingWritten(row)) {
                return Optional.empty();
            }
            long frames = CaptureFile.framesIn(row.file(), row.notes().format());
            return Optional.of(new LeftCapture(
                    row.id(), row.notes(), row.file(), frames, row.writer().isEmpty(), row.losses()));
        } catch (IOException e) {
            throw Trouble.with(row.file(), e);
        }
    }

    /** This program's own files are not touched to find out: closing a second handle would give the lock up. */
    private boolean isBeingWritten(Waiting row) throws IOException {
        if (row.writer().isEmpty() || brokenOff.contains(row.id())) {
            return false;
        }
        return row.writer().get().equals(Writer.self().text()) || CaptureFile.isLocked(row.file());
    }

    private LeftCapture required(CaptureId id) {
        return database.read(connection -> rows(connection, "c.id = " + id.number())).stream()
                .flatMap(row -> left(row).stream())
                .findFirst()
                .orElseThrow(() -> new RefusedEntryException("no recording " + id
                        + " waits to be kept; it still runs, is kept already, or never was. List those that wait"));
    }

    @Override
    public LeftCapture mend(CaptureId id) {
        LeftCapture left = required(id);
        try {
            CaptureFile.mend(left.file(), left.notes().format());
        } catch (IOException e) {
            throw Trouble.with(left.file(), e);
        }
        return required(id);
    }

    @Override
    public void export(CaptureId id, Path target) {
        LeftCapture left = mend(id);
        if (Files.exists(target)) {
            throw new RefusedEntryException(target + " exists already; choose another name");
        }
        try {
            Durable.write(target, partial -> Files.copy(left.file(), partial));
        } catch (IOException e) {
            throw Trouble.with(target, e);
        }
    }

    @Override
    public Path setAside(CaptureId id) {
        LeftCapture left = mend(id);
        Path target = folder.capturesSetAside().resolve(left.file().getFileName());
        try {
            Files.createDirectories(folder.capturesSetAside());
            Durable.rename(left.file(), target);
        } catch (IOException e) {
            throw Trouble.with(target, e);
        }
        end(id, "set-aside");
        return target;
    }

    @Override
    public Optional<SittingId> keptAs(CaptureId id) {
        LeftCapture left = required(id);
        try {
            String sha256 = Sha256.of(left.file()).hex();
            return database.read(connection -> SittingTables.ofOneRecording(
                    connection,
                    sha256,
                    String.valueOf(left.file().getFileName()),
                    left.notes().startedAt()));
        } catch (IOException e) {
            throw Trouble.with(left.file(), e);
        }
    }

    @Override
    public void release(CaptureId id, Original kept) {
        if (database.read(connection -> isKept(connection, id))) {
            return;
        }
        LeftCapture left = required(id);
        try {
            if (!Sha256.of(left.file()).hex().equals(kept.sha256())) {
                throw new IllegalArgumentException("original " + kept.sha256() + " is not recording " + id);
            }
            new Originals(folder).locate(kept);
            end(id, KEPT);
            Files.delete(left.file());
        } catch (IOException e) {
            throw Trouble.with(left.file(), e);
        }
    }

    private static boolean isKept(Connection connection, CaptureId id) throws SQLException {
        return Query.one(connection, "SELECT state FROM capture WHERE id = ?", row -> row.text("state"), id.number())
                .equals(Optional.of(KEPT));
    }

    private void end(CaptureId id, String state) {
        database.write(
                connection -> Insert.into("capture").put("state", state).updateWhere(connection, "id", id.number()));
    }
}
