package io.github.tapwright.archive;

import io.github.tapwright.sitting.Original;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Where things lie in an archive's folder.
 *
 * @param root the folder
 */
record ArchiveFolder(Path root) {

    static final String DATABASE = "tapwright.db";
    static final String ORIGINALS = "originals";

    Path database() {
        return root.resolve(DATABASE);
    }

    Path originals() {
        return root.resolve(ORIGINALS);
    }

    Path incoming() {
        return originals().resolve("incoming");
    }

    Path captures() {
        return root.resolve("captures");
    }

    /** The files of live recordings, without those that were set aside. */
    List<Path> captureFiles() throws IOException {
        if (!Files.isDirectory(captures())) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(captures())) {
            return entries.filter(p -> Files.isRegularFile(p, LinkOption.NOFOLLOW_LINKS))
                    .sorted()
                    .toList();
        }
    }

    Path capturesSetAside() {
        return captures().resolve("set-aside");
    }

    Path backups() {
        return root.resolve("backups");
    }

    Path original(Original original) {
        return root.resolve(relative(original));
    }

    /** Path of an original below the archive's folder, with slashes on every system. */
    static String relative(Original original) {
        return ORIGINALS + "/" + original.sha256().substring(0, 2) + "/" + original.sha256() + "."
                + original.extension();
    }

    /**
     * Makes the folder ready: creates a new archive only where nothing else lies.
     *
     * @throws ArchiveException if the folder holds something that is no archive
     */
    void prepare() throws IOException {
        if (Files.exists(root) && !Files.isDirectory(root)) {
            throw new ArchiveException(root + " is a file, not an archive's folder; choose a folder");
        }
        // Asked once more at the end: another program may be making the archive at this very moment.
        if (!Files.exists(database()) && !empty(root) && !Files.exists(database())) {
            throw new ArchiveException(
                    Files.isDirectory(originals())
                            ? "the database " + database() + " is missing; restore the latest backup into a new folder"
                            : root + " is not an archive and not empty; " + remedy());
        }
        Files.createDirectories(root);
    }

    /** A demo's folder holds its archive one step further down. */
    private String remedy() {
        ArchiveFolder below = new ArchiveFolder(root.resolve("archive"));
        return Files.isRegularFile(below.database())
                ? "the archive in it is " + below.root() + ", choose that one"
                : "choose an archive or an empty folder";
    }

    /** Creates the folders beside the database that are not there yet. */
    void complete() throws IOException {
        for (Path folder : List.of(originals(), incoming(), captures(), backups())) {
            Files.createDirectories(folder);
        }
        Durable.sync(originals());
        Durable.sync(root);
    }

    static boolean empty(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return true;
        }
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.findAny().isEmpty();
        }
    }
}
