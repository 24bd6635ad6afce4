package io.github.tapwright.archive;

import io.github.tapwright.sitting.BenchStudyStore;
import io.github.tapwright.sitting.CalibrationStore;
import io.github.tapwright.sitting.InstrumentStore;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.ShopStore;
import io.github.tapwright.sitting.SittingStore;
import io.github.tapwright.sitting.listening.ListeningStore;
import io.github.tapwright.sitting.live.CaptureId;
import io.github.tapwright.sitting.live.CaptureStore;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * An open archive: a workshop's instruments, sittings and recordings in one folder.
 *
 * <p>It may be used from several threads, which then wait for each other, and be open in several programs.
 */
public final class Archive implements AutoCloseable {

    private final ArchiveFolder folder;
    private final Database database;
    private final Originals originals;
    private final OutlineMemory outlines = new OutlineMemory();
    private final Set<CaptureId> brokenOff = ConcurrentHashMap.newKeySet();

    private Archive(ArchiveFolder folder, Database database) {
        this.folder = folder;
        this.database = database;
        this.originals = new Originals(folder);
    }

    /**
     * Opens the archive in a folder; creates it if the folder is empty or does not exist. An archive of an older
     * version is brought up to date, after a copy of its database was put into {@code backups/}.
     *
     * @param folder the archive's folder
     * @param clock what tells the time, for the names of backups
     * @return the open archive
     * @throws ArchiveException if the folder is no archive, was written by a newer program, or cannot be written
     */
    public static Archive open(Path folder, Clock clock) {
        return open(folder, clock, Migration.known());
    }

    static Archive open(Path path, Clock clock, List<Migration> migrations) {
        ArchiveFolder folder = new ArchiveFolder(path.toAbsolutePath().normalize());
        try {
            folder.prepare();
            Database database = Database.open(folder.database());
            boolean ready = false;
            try {
                new Migrator(migrations, clock).migrate(database, folder.backups());
                database.useWriteAheadLog();
                folder.complete();
                ready = true;
                return new Archive(folder, database);
            } finally {
                if (!ready) {
                    database.close();
                }
            }
        } catch (IOException e) {
            throw Trouble.with(folder.root(), e);
        }
    }

    /**
     * The archive's folder.
     *
     * @return an absolute path
     */
    public Path folder() {
        return folder.root();
    }

    /**
     * Running recordings, and those that wait to be kept.
     *
     * @return a store that works while the archive is open
     */
    public CaptureStore captures() {
        return captureTables();
    }

    private CaptureTables captureTables() {
        return new CaptureTables(database, folder, brokenOff);
    }

    /**
     * The instruments of this archive.
     *
     * @return a store that works while the archive is open
     */
    public InstrumentStore instruments() {
        return new InstrumentTable(database);
    }

    /**
     * The sittings of this archive.
     *
     * @return a store that works while the archive is open
     */
    public SittingStore sittings() {
        return new SittingTables(database, originals, outlines);
    }

    /**
     * The calibrations of this archive.
     *
     * @return a store that works while the archive is open
     */
    public CalibrationStore calibrations() {
        return new CalibrationTables(database, originals);
    }

    /**
     * The studies of the bench in this archive.
     *
     * @return a store that works while the archive is open
     */
    public BenchStudyStore benchStudies() {
        return new BenchStudyTables(database);
    }

    /**
     * What the workshop says of itself.
     *
     * @return a store that works while the archive is open
     */
    public ShopStore shop() {
        return new ShopTable(database, originals);
    }

    /**
     * The blind listenings of this archive.
     *
     * @return a store that works while the archive is open
     */
    public ListeningStore listenings() {
        return new ListeningTables(database);
    }

    /**
     * Reads the database and every byte of the originals, and compares them with what should be there; changes nothing.
     *
     * <p>Of running recordings only what the database says of them is checked; earlier backups are not looked at.
     *
     * @param progress told about each original
     * @return what is wrong, what is kept although nothing refers to it, what was left over, and what waits to be kept
     */
    public VerifyReport verify(Progress progress) {
        return new ArchiveCheck(folder, database, captureTables()).run(progress);
    }

    /**
     * Writes the whole archive into one ZIP file, which {@link Restore} turns back into an archive. Sittings may
     * be added meanwhile. Running recordings and earlier backups are not part of it.
     *
     * @param target a file that does not exist yet; it gets its name only when it is complete
     * @param progress told about each file
     * @throws ArchiveException if the file exists, cannot be written, or the archive is damaged
     */
    public void backUp(Path target, Progress progress) {
        new BackupWriter(folder, database).write(target, progress);
    }

    @Override
    public void close() {
        database.close();
    }
}
