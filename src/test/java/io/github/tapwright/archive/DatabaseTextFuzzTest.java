package io.github.tapwright.archive;

import com.code_intelligence.jazzer.junit.FuzzTest;
import io.github.tapwright.fuzz.Bounds;
import io.github.tapwright.fuzz.TypedText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/**
 * A sound database with a value no version of this program writes, as a hostile backup has it.
 *
 * <p>The input's first two bytes choose the column, the rest is the text put there in every row.
 */
class DatabaseTextFuzzTest {

    private static final Bounds BOUNDS = Bounds.refusingWith(List.of(ArchiveException.class));

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
        if (bytes.length < 2) {
            return;
        }
        int column = ((bytes[0] & 0xFF) << 8) | (bytes[1] & 0xFF);
        archive.put(archive.database());
        archive.setEveryRow(column, TypedText.of(Arrays.copyOfRange(bytes, 2, bytes.length)));
        BOUNDS.hold(archive.database().length, archive::readAll);
    }
}
