package io.github.tapwright.archive;

import io.github.tapwright.sitting.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

/** Makes an archive from a backup. */
public final class Restore {

    private final Clock clock;

    /**
     * Joins the task with what it needs.
     *
     * @param clock what tells the time
     */
    public Restore(Clock clock) {
        this.clock = clock;
    }

    /**
     * Restores a backup into a folder that does not exist or is empty. All is read into a folder beside it and
     * checked there; only a sound archive gets the folder's name, and after a failure nothing is left.
     *
     * @param backup the ZIP file {@link Archive#backUp} wrote
     * @param folder where the archive shall be
     * @param progress told about each file
     * @return what the check of the restored archive found; it is clean
     * @throws ArchiveException if the folder is not empty, or the backup is cut short, damaged, something else, or would
     *     unpack to more than 1 GB and 200 times its own size
     */
    public VerifyReport restore(Path backup, Path folder, Progress progress) {
        Path target = folder.toAbsolutePath().normalize();
        Path partial = target.resolveSibling(target.getFileName() + ".restoring-" + UUID.randomUUID());
        try {
            refuseUnreadable(backup);
            if (!ArchiveFolder.empty(target)) {
                throw new ArchiveException(folder + " is not empty; restore into a new or empty folder");
            }
            try {
                Files.createDirectories(partial);
                new BackupReader(backup).readInto(partial, progress);
                VerifyReport report = check(partial, progress);
                Files.deleteIfExists(target);
                Durable.rename(partial, target);
                return report;
            } finally {
                delete(partial);
                progress.end();
            }
        } catch (NoSuchFileException e) {
            throw Trouble.with(backup, e);
        } catch (IOException e) {
            throw Trouble.with(folder, e);
        }
    }

    /** Before anything is said about the folder, which has no part in it. */
    private static void refuseUnreadable(Path backup) throws NoSuchFileException {
        if (!Files.exists(backup)) {
            throw new NoSuchFileException(backup.toString());
        }
        if (!Files.isRegularFile(backup)) {
            throw new ArchiveException(backup + " is no backup, it is no file; choose the ZIP file that backup wrote");
        }
        if (!Files.isReadable(backup)) {
            throw new ArchiveException(
                    "no permission to read " + backup + "; give yourself read permission, or copy it");
        }
    }

    private VerifyReport check(Path restored, Progress progress) {
        try (Archive archive = Archive.open(restored, clock)) {
            VerifyReport report = archive.verify(progress);
            if (!report.clean()) {
                throw BackupManifest.refused(report.problems().get(0));
            }
            return report;
        }
    }

    /** Deletes a folder with all that is in it; nothing if there is none. */
    static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        List<Path> deepestFirst;
        try (Stream<Path> paths = Files.walk(folder)) {
            deepestFirst = paths.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path path : deepestFirst) {
            Files.deleteIfExists(path);
        }
    }
}
