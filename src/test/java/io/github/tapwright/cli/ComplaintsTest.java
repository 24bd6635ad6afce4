package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
    void aNumberOrAWordThatIsNoneIsRefusedInPlainWords() {
        assertThat(CommandRun.of("note", TAPS, "--a4", "442,5").err())
                .contains("'442,5' is no number such as 21.5")
                .hasLineCount(1);
        for (String withUnit : List.of("48F", "440d", "0x1B8p0")) {
            assertThat(CommandRun.of("note", TAPS, "--a4", withUnit).err())
                    .contains("'" + withUnit + "' is no number such as 21.5; give it without its unit");
        }
        assertThat(CommandRun.of("fingerboard", TAPS, "--frets", "x").err())
                .contains("'x' is no whole number such as 6")
                .hasLineCount(1);
        assertThat(CommandRun.of("sitting", "name", "1", "--frequency", "102,0").err())
                .contains("'102,0' is no number such as 21.5");
        assertThat(CommandRun.of("tap", TAPS).err())
                .contains("did you mean", "taps")
                .hasLineCount(1);
        assertThat(CommandRun.of("taps", TAPS, "--taken", "2026-03-13").err())
                .contains("Unknown option: '--taken'")
                .doesNotContain("2026-03-13");
    }

    @Test
    void aFileInPlaceOfAFolderIsCalledAFile() throws IOException {
        Path file = Files.writeString(folder.resolve("existing.csv"), "x");
        CommandRun.of("instrument", "add", "1", "--archive", folder.resolve("archive"));
        assertThat(CommandRun.of("export", file, "--archive", folder.resolve("archive"))
                        .err())
                .contains(file + " is a file; name a folder to write into");
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
