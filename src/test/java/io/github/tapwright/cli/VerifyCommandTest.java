package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VerifyCommandTest {

    @TempDir
    Path folder;

    @Test
    void whatAStoppedProgramLeftIsNamedWithWhatToDoAboutIt() throws IOException {
        assertThat(CommandRun.of("instrument", "add", "41", "--archive", folder).code())
                .isZero();
        Path copy = folder.resolve("originals/incoming/1/taps.wav");
        Files.createDirectories(copy.getParent());
        Files.write(copy, new byte[100]);
        Files.write(folder.resolve("captures/stray.wav"), new byte[100]);

        CommandRun run = CommandRun.of("verify", "--archive", folder);

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains(
                        "originals/incoming/1/taps.wav; it does no harm and may be deleted while no other Tapwright runs")
                .contains("captures/stray.wav; no recording that waits, so listen to it before you delete it");
    }
}
