package io.github.tapwright.report;

import com.code_intelligence.jazzer.junit.FuzzTest;
import io.github.tapwright.fuzz.Bounds;
import io.github.tapwright.instrument.RefusedEntryException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;

/** Any bytes where a workshop's picture should be. */
class EmblemFuzzTest {

    private static final Bounds BOUNDS = Bounds.refusingWith(List.of(RefusedEntryException.class));

    @TempDir
    static Path folder;

    @FuzzTest
    void isTakenOrRefused(byte[] bytes) {
        BOUNDS.hold(bytes.length, () -> Emblem.of(Files.write(folder.resolve("emblem"), bytes), "emblem"));
    }
}
