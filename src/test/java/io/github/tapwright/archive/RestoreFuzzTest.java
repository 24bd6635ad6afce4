package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import io.github.tapwright.fuzz.Bounds;
import io.github.tapwright.sitting.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/** Any bytes where a backup should be: a whole archive comes of them, or nothing at all, and nothing elsewhere. */
class RestoreFuzzTest {

    private static final Bounds BOUNDS = Bounds.refusingWith(List.of(ArchiveException.class));

    @TempDir
    static Path folder;

    /** Loads what restoring needs, which is no part of what an input takes. */
    @BeforeAll
    static void openAnArchive() throws IOException {
        FuzzedArchive.in(folder).readAll();
    }

    @FuzzTest
    void isRestoredOrRefused(byte[] bytes) throws IOException {
        Path backup = Files.write(folder.resolve("backup.zip"), bytes);
        BOUNDS.hold(bytes.length, () -> {
            Path place = Files.createTempDirectory(folder, "place");
            try {
                new Restore(Workshop.CLOCK).restore(backup, place.resolve("restored"), Progress.SILENT);
            } finally {
                try (Stream<Path> files = Files.list(place)) {
                    assertThat(files.map(f -> String.valueOf(f.getFileName()))).allMatch("restored"::equals);
                }
                Restore.delete(place);
            }
        });
    }
}
