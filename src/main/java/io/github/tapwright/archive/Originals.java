package io.github.tapwright.archive;

import io.github.tapwright.recording.UnreadableRecordingException;
import io.github.tapwright.sitting.Original;
import io.github.tapwright.sitting.StagedOriginal;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/** The originals of an archive: copied in, given their name by content, and never changed again. */
final class Originals {

    private final ArchiveFolder folder;

    Originals(ArchiveFolder folder) {
        this.folder = folder;
    }

    /**
     * Copies a file into a folder of its own below {@code incoming}, digesting it in the same pass.
     *
     * @throws UnreadableRecordingException if the maker's file is not there or may not be read
     */
    StagedOriginal stage(Path file) {
        String name = fileName(file);
        Path copy = folder.incoming().resolve(UUID.randomUUID().toString()).resolve(name);
        try {
            Sha256 content = copy(file, copy);
            return new StagedOriginal(new Original(content.hex(), content.sizeBytes(), extension(name)), name, copy);
        } catch (IOException e) {
            discard(copy);
            throw Trouble.with(copy, e);
        }
    }

    private static String fileName(Path file) {
        if (!Files.exists(file)) {
            throw new UnreadableRecordingException("there is no file " + file + "; check its name and folder");
        }
        Path name = file.getFileName();
        if (name == null || !Files.isRegularFile(file)) {
            throw new UnreadableRecordingException(file + " is no ordinary file; give sound files one by one");
        }
        if (!Files.isReadable(file)) {
            throw new UnreadableRecordingException(
                    "no permission to read " + file + "; give yourself read permission, or copy it");
        }
        return name.toString();
    }

    private static Sha256 copy(Path from, Path to) throws IOException {
        try (InputStream in = Files.newInputStream(from)) {
            Files.createDirectories(Durable.parent(to));
            Sha256 content;
            try (OutputStream out = Files.newOutputStream(to, StandardOpenOption.CREATE_NEW)) {
                content = Sha256.copy(in, out);
            }
            Durable.sync(to);
            return content;
        }
    }

    /** Removes a copy that is not wanted; one that cannot be removed is left for the check to list. */
    void discard(Path copy) {
        try {
            Files.deleteIfExists(copy);
            Files.deleteIfExists(Durable.parent(copy));
        } catch (IOException e) {
            // Whatever is in the way, nothing refers to the copy and the next check lists it.
            return;
        }
    }

    /**
     * Gives a staged copy its final name, or finds that the archive has this content already.
     *
     * @return the original as it is kept, perhaps under another extension than the copy's
     */
    Original place(StagedOriginal staged) throws IOException {
        Optional<Original> kept = kept(staged.original());
        if (kept.isPresent()) {
            refuseDamaged(kept.get());
            return kept.get();
        }
        Path target = folder.original(staged.original());
        Path shelf = Durable.parent(target);
        if (!Files.isDirectory(shelf)) {
            Files.createDirectories(shelf);
            Durable.sync(folder.originals());
        }
        Durable.rename(staged.file(), target);
        return staged.original();
    }

    private Optional<Original> kept(Original wanted) throws IOException {
        Path shelf = Durable.parent(folder.original(wanted));
        try (Stream<Path> files = Files.list(shelf)) {
            return files.map(p -> String.valueOf(p.getFileName()))
                    .filter(n -> n.startsWith(wanted.sha256() + "."))
                    .sorted()
                    .map(n -> new Original(wanted.sha256(), wanted.sizeBytes(), n.substring(n.indexOf('.') + 1)))
                    .findFirst();
        } catch (NoSuchFileException | NotDirectoryException e) {
            return Optional.empty();
        }
    }

    /** The place of an original that is there and undamaged. */
    Path locate(Original original) {
        try {
            refuseDamaged(original);
            return folder.original(original);
        } catch (IOException e) {
            throw Trouble.with(folder.original(original), e);
        }
    }

    private void refuseDamaged(Original original) throws IOException {
        OriginalState state = OriginalState.of(folder.original(original), original);
        if (state != OriginalState.SOUND) {
            throw new ArchiveException("the archive's original " + folder.original(original) + " " + state.words()
                    + "; move it aside, put a good copy in its place (from a backup), and run verify");
        }
    }

    private static String extension(String fileName) {
        String ending = fileName.substring(fileName.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return fileName.contains(".") && ending.matches("[0-9a-z]{1,8}") ? ending : "bin";
    }

    /** What a look at a kept file shows. */
    enum OriginalState {
        SOUND("is sound"),
        MISSING("is missing"),
        NOT_A_FILE("is a link or a folder, not a file"),
        WRONG_SIZE("has the wrong size"),
        WRONG_CONTENT("is damaged: its content no longer fits its SHA-256");

        private final String words;

        OriginalState(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }

        static OriginalState of(Path file, Original expected) throws IOException {
            if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                return MISSING;
            }
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                return NOT_A_FILE;
            }
            if (Files.size(file) != expected.sizeBytes()) {
                return WRONG_SIZE;
            }
            return Sha256.of(file).hex().equals(expected.sha256()) ? SOUND : WRONG_CONTENT;
        }
    }
}
