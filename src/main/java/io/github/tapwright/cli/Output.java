package io.github.tapwright.cli;

import java.io.IOException;
import java.io.Serial;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes what was asked for; an output that cannot be written is named, with a remedy. */
final class Output {

    private Output() {}

    /** Something that writes. */
    interface Writing {
        void write() throws IOException;
    }

    /**
     * Something that writes and tells what came of it.
     *
     * @param <T> such as whether there was anything to write
     */
    interface Attempt<T> {
        T write() throws IOException;
    }

    /** An output that cannot be written, in words for the maker. */
    static final class UnwritableException extends RuntimeException {

        @Serial
        private static final long serialVersionUID = 1L;

        private UnwritableException(Path output, IOException failure) {
            super(words(output, failure), failure);
        }
    }

    /** Writes. */
    static void to(Path output, Writing writing) {
        try {
            writing.write();
        } catch (IOException e) {
            throw new UnwritableException(output, e);
        }
    }

    /** Writes; gives what the attempt tells. */
    static <T> T tryTo(Path output, Attempt<T> attempt) {
        try {
            return attempt.write();
        } catch (IOException e) {
            throw new UnwritableException(output, e);
        }
    }

    private static String words(Path output, IOException failure) {
        String why = reason(failure);
        if (why.contains("No space left") || why.contains("not enough space")) {
            return output + " cannot be written, the disk is full; free some space and try again";
        }
        if (Files.isDirectory(output)) {
            return output + " cannot be written, it is a folder; name a file in it";
        }
        if (failure instanceof FileAlreadyExistsException) {
            return output + " is a file; name a folder to write into";
        }
        return output + " cannot be written; check that its folder exists and may be written to";
    }

    private static String reason(IOException failure) {
        return failure instanceof FileSystemException f && f.getReason() != null
                ? f.getReason()
                : String.valueOf(failure.getMessage());
    }
}
