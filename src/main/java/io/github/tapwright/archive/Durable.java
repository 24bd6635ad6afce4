package io.github.tapwright.archive;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.UUID;

/** Writes that survive a power cut: a file is on disk before its name is, and its name before anyone is told. */
final class Durable {

    private static final boolean WINDOWS =
            System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows");

    private Durable() {}

    /** Fills a file whose name is given. */
    @FunctionalInterface
    interface Filling {

        void into(Path file) throws IOException;
    }

    /**
     * Makes a file under a passing name and gives it its own once all of it is on disk; nothing is left if that fails.
     *
     * @throws ArchiveException if another file got that name meanwhile, which is left as it is
     */
    static void write(Path target, Filling filling) throws IOException {
        Path partial = target.resolveSibling(target.getFileName() + ".partial-" + UUID.randomUUID());
        try {
            filling.into(partial);
            sync(partial);
            if (Files.exists(target)) {
                throw new ArchiveException(target + " exists already; choose another name");
            }
            rename(partial, target);
        } finally {
            Files.deleteIfExists(partial);
        }
    }

    /** Waits until a file's or a folder's content is on disk. */
    static void sync(Path path) throws IOException {
        boolean folder = Files.isDirectory(path);
        // Windows cannot open a folder, and its file systems keep renames in a journal of their own.
        if (folder && WINDOWS) {
            return;
        }
        StandardOpenOption how = folder ? StandardOpenOption.READ : StandardOpenOption.WRITE;
        try (FileChannel channel = FileChannel.open(path, how)) {
            channel.force(true);
        }
    }

    /** Gives a finished, synced file or folder its final name in one step, and waits until the name is on disk. */
    static void rename(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            throw new IOException("the file system cannot rename in one step", e);
        }
        sync(parent(to));
    }

    static Path parent(Path path) {
        Path parent = path.toAbsolutePath().getParent();
        return parent == null ? path.toAbsolutePath() : parent;
    }
}
