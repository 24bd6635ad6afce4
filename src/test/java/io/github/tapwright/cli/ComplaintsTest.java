package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What cannot be read is not said to be unwritable, and what cannot be written is named as the maker named it. */
class ComplaintsTest {

    private static final Path TAPS = CommandRun.DEMO.resolve("31-2024-04-09-strung.flac");

    @TempDir
    Path folder;

    @Test
    void anOutputThatCannotBeWrittenIsNamedAsItWasAskedFor() {
        Path picture = folder.resolve("no such folder").resolve("taps.png");

        CommandRun run = CommandRun.of("taps", TAPS, "--plot", picture);

        assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run.err())
                .contains(picture + " cannot be written; check that its folder exists")
                .doesNotContain(".part")
                .hasLineCount(1);
    }

    @Test
    void aFolderInPlaceOfAnOutputIsCalledAFolder() throws IOException {
        Path table = Files.createDirectory(folder.resolve("partials.csv"));
        Path note = PlayedRun.write(folder.resolve("note.wav"), PlayedRun.note(110, 3, 1, 1));

        CommandRun run = CommandRun.of("note", note, "--csv", table);

        assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run.err())
                .contains(table + " cannot be written, it is a folder")
                .hasLineCount(1);
    }

    @Test
    void aDescriptionThatCannotBeReadIsSaidToBeUnreadable() throws IOException {
        Path unreadable = Path.of("/proc/self/mem");
        assumeTrue(Files.isRegularFile(unreadable), "only Linux offers a file that is there and never reads");
        Path description = Files.createSymbolicLink(folder.resolve("workshop.json"), unreadable);

        CommandRun run = CommandRun.of("demo", folder.resolve("out"), "--from", folder);

        assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
        assertThat(run.err()).contains(description + " cannot be read").hasLineCount(1);
    }

    @Test
    void aDescriptionInAnotherAlphabetIsNotCalledUnwritable() throws IOException {
        Path description = folder.resolve("workshop.json");
        Files.write(description, "{\"workshop\": \"Möwe\"}".getBytes(StandardCharsets.ISO_8859_1));

        CommandRun run = CommandRun.of("demo", folder.resolve("out"), "--from", folder);

        assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run.err()).contains(description + " is no text in UTF-8").hasLineCount(1);
    }
}
