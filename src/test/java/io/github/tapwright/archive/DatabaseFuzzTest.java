package io.github.tapwright.archive;

import com.code_intelligence.jazzer.junit.FuzzTest;
import io.github.tapwright.fuzz.Bounds;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/**
 * A database damaged anywhere, as a failing disk or a hostile backup has it.
 *
 * <p>The input is a list of changes, four bytes each: where (three bytes, modulo the database's length) and the byte
 * to put there.
 */
class DatabaseFuzzTest {

    private static final Bounds BOUNDS = Bounds.refusingWith(List.of(ArchiveException.class));
    private static final int MOST_CHANGES = 64;

    @TempDir
    static Path folder;

    private static FuzzedArchive archive;

    @BeforeAll
    static void fill() throws IOException {
        archive = FuzzedArchive.in(folder);
        archive.readAll(); // loads what reading needs, which is no part of what an input takes
    }

    @FuzzTest
    void everythingIsReadOrRefused(byte[] bytes) throws IOException {
        byte[] database = archive.database();
        ByteBuffer changes = ByteBuffer.wrap(bytes);
        for (int i = 0; i < MOST_CHANGES && changes.remaining() >= 4; i++) {
            int change = changes.getInt();
            database[(change >>> 8) % database.length] = (byte) change;
        }
        archive.put(database);
        BOUNDS.hold(database.length, archive::readAll);
    }
}
