package io.github.tapwright.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A copy of a database that others may be writing to: one consistent state in one file. */
final class DatabaseCopy {

    private DatabaseCopy() {}

    /** Writes the copy to a new file; it is on disk under its name when this returns. */
    static void write(Database database, Path target) throws IOException {
        Path partial = target.resolveSibling(target.getFileName() + ".partial");
        try {
            database.vacuumInto(partial);
            Durable.sync(partial);
            Durable.rename(partial, target);
        } finally {
            Files.deleteIfExists(partial);
        }
    }
}
