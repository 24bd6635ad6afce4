package io.github.tapwright.desktop.settings;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import io.github.tapwright.fuzz.Bounds;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;

/** Any bytes where the desk's settings should be: they never keep the desk from opening. */
class SettingsFileFuzzTest {

    private static final Bounds BOUNDS = Bounds.refusingWith(List.of());

    @TempDir
    static Path folder;

    @FuzzTest
    void settingsComeOfAnything(byte[] bytes) {
        BOUNDS.hold(bytes.length, () -> {
            Files.write(folder.resolve("desk.properties"), bytes);
            SettingsFile file = new SettingsFile(folder);
            DeskSettings settings = file.read();
            file.write(settings);
            assertThat(file.read()).isEqualTo(settings);
        });
    }
}
