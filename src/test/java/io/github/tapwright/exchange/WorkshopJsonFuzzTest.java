package io.github.tapwright.exchange;

import com.code_intelligence.jazzer.junit.FuzzTest;
import io.github.tapwright.fuzz.Bounds;
import io.github.tapwright.instrument.RefusedEntryException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;

/** Any bytes where a workshop's JSON file should be. */
class WorkshopJsonFuzzTest {

    private static final Bounds BOUNDS = Bounds.refusingWith(List.of(RefusedEntryException.class));

    @TempDir
    static Path folder;

    @FuzzTest
    void isReadOrRefused(byte[] bytes) {
        BOUNDS.hold(bytes.length, () -> WorkshopJson.read(Files.write(folder.resolve("workshop.json"), bytes)));
    }
}
