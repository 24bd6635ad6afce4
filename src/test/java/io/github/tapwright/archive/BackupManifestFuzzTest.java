package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import io.github.tapwright.fuzz.Bounds;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Any text where a backup's list of files should be: no path on it leads out of the archive's folder. */
class BackupManifestFuzzTest {

    private static final Bounds BOUNDS = Bounds.refusingWith(List.of(ArchiveException.class));

    @FuzzTest
    void isReadOrRefused(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        Path folder = Path.of("archive").toAbsolutePath();
        BOUNDS.hold(bytes.length, () -> {
            for (BackupManifest.Item item : BackupManifest.parse(text).files()) {
                Path file = folder.resolve(item.path());
                assertThat(file.startsWith(folder) && file.normalize().equals(file))
                        .as(item.path())
                        .isTrue();
                assertThat(item.path()).doesNotContain("\\", ":");
            }
        });
    }
}
