package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import io.github.tapwright.fuzz.Bounds;
import io.github.tapwright.sitting.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;

/** Any bytes where a backup should be: a whole archive comes of them, or nothing at all, and nothing elsewhere. */
class RestoreFuzzTest {

    private static final Bounds BOUNDS = Bounds.refusingWith(ArchiveException.class);

    @TempDir
    static Path folder;

    @FuzzTest
    void isRestoredOrRefused(byte[] bytes) throws IOException {
        Path backup = Files.write(folder.resolve("backup.zip"), bytes);
        Path target = folder.resolve("restored");
        BOUNDS.hold(bytes.length, () -> new Restore(Workshop.CLOCK).restore(backup, target, Progress.SILENT));
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.filter(f -> !f.equals(backup) && !f.equals(target)))
                    .isEmpty();
        }
        FuzzedArchive.delete(target);
    }
}
