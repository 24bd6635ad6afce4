package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.tapwright.audio.WavSamples;
import io.github.tapwright.audio.WavWriter;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TapsCommandTest {

    private static final Path CLIPPED_ONCE = CommandRun.DEMO.resolve("32-2024-02-13-before-finish.flac");
    private static final Path CLEAN = CommandRun.DEMO.resolve("36-2024-06-11-in-the-white.flac");

    @TempDir
    Path folder;

    @Test
    void theTablesShowStrikesWithVerdictsAndResonancesWithUncertainties() {
        CommandRun run = CommandRun.of("taps", CLIPPED_ONCE, "--hole", "open");

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("rejected: clipped (").containsPattern("main top: ");
        assertThat(run.out()).contains("0 dB is the strongest resonance found");
        assertThat(run.out()).containsPattern("183\\.\\d+ ± 0\\.\\d+");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void jsonIsOneDocumentAndNothingElse() throws JsonProcessingException {
        CommandRun run = CommandRun.of("taps", CLIPPED_ONCE, "--json");
        JsonNode document = new ObjectMapper().readTree(run.out());

        assertThat(run.code()).isZero();
        assertThat(document.path("strikes")).hasSize(7);
        assertThat(document.path("strikes")
                        .path(2)
                        .path("rejected_because")
                        .path(0)
                        .textValue())
                .isEqualTo("clipped");
        assertThat(document.path("resonances").size()).isGreaterThanOrEqualTo(4);
    }

    @Test
    void oneRecordingGivenTwiceDoesNotCountItsStrikesTwice() throws IOException {
        Path copy = Files.copy(CLEAN, folder.resolve("copy.flac"));

        for (Path again : List.of(CLEAN, copy)) {
            CommandRun run = CommandRun.of("taps", "--together", CLIPPED_ONCE, CLEAN, again);
            assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
            assertThat(run.err())
                    .contains(again + " holds the same recording as", "give each recording once")
                    .hasLineCount(1);
        }
    }

    @Test
    void filesTogetherAreOneSetAndFilesApartAreAnArray() throws JsonProcessingException {
        JsonNode together = new ObjectMapper()
                .readTree(CommandRun.of("taps", CLEAN, CLIPPED_ONCE, "--together", "--json")
                        .out());
        JsonNode apart = new ObjectMapper()
                .readTree(CommandRun.of("taps", CLEAN, CLIPPED_ONCE, "--json").out());

        assertThat(together.path("files")).hasSize(2);
        assertThat(together.path("strikes").path(12).path("file").textValue()).isEqualTo(CLIPPED_ONCE.toString());
        assertThat(apart.isArray()).isTrue();
        assertThat(apart).hasSize(2);
    }

    @Test
    void filesAtOnceGiveTheSameAsOneByOne() {
        List<Path> files = List.of(CLEAN, CLIPPED_ONCE, CommandRun.DEMO.resolve("35-2024-07-16-strung.flac"));
        String oneByOne =
                files.stream().map(file -> CommandRun.of("taps", file).out()).collect(Collectors.joining());

        // One after another the program is as it was; side by side nothing may leak from one file into the next.
        assertThat(CommandRun.of("taps", files.get(0), files.get(1), files.get(2))
                        .out())
                .isEqualTo(oneByOne);
    }

    @Test
    void thePictureIsWrittenWhereItIsAskedFor() throws IOException {
        Path picture = folder.resolve("curve.svg");
        CommandRun run = CommandRun.of("taps", CLEAN, "--hole", "open", "--plot", picture);
        String top = run.out()
                .lines()
                .filter(l -> l.contains("main top"))
                .findFirst()
                .orElseThrow();
        String figure = top.strip().replaceFirst("^\\d+\\s+(\\d+\\.\\d+ ± \\d+\\.\\d+).*", "$1");
        assertThat(Files.readString(picture)).contains(figure + " Hz", "figures: ± one standard uncertainty");

        assertThat(run.code()).isZero();
        assertThat(run.err()).contains("wrote " + picture);
        assertThat(Files.readString(picture)).contains("main air", "6 of 6 strikes used");
    }

    @Test
    void silenceHasNothingUsableAndTheOutputSaysSo() throws IOException {
        Path silence = folder.resolve("silence.wav");
        WavWriter.write(silence, Recording.of(new SampleRate(48_000), new double[96_000]), WavSamples.INT_16);
        CommandRun run = CommandRun.of("taps", silence);

        assertThat(run.code()).isEqualTo(ExitCode.NOTHING_USABLE);
        assertThat(run.out()).contains("No strikes found");
        assertThat(run.err()).contains("nothing usable was found in " + silence);
    }

    @Test
    void aFileThatIsNoSoundIsNamedWithARemedyOnOneLine() throws IOException {
        Path letter = Files.writeString(folder.resolve("letter.wav"), "Dear maker, this is not a sound at all.");
        CommandRun run = CommandRun.of("taps", CLEAN, letter, "--json");

        assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("tapwright: " + letter).hasLineCount(1);
    }

    @Test
    void aFileThatIsNotThereIsExitThree() {
        CommandRun run = CommandRun.of("taps", folder.resolve("none.wav"));

        assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
        assertThat(run.err()).contains("none.wav").hasLineCount(1);
    }

    @ParameterizedTest
    @CsvSource({
        "--band, 500, 60:1000",
        "--band, 500:400, octave",
        "--hole, ajar, covered",
        "--plot, curve.jpg, .png or .svg",
        "--nonsense, 1, --nonsense"
    })
    void wrongUseSaysWhatWouldBeRight(String option, String value, String remedy) {
        CommandRun run = CommandRun.of("taps", CLEAN, option, value);

        assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("tapwright: ").contains(remedy).hasLineCount(1);
    }

    @Test
    void aPictureThatCannotBeWrittenSaysWhere() {
        CommandRun run = CommandRun.of("taps", CLEAN, "--plot", folder.resolve("no/such/folder/curve.png"));

        assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run.err()).contains("curve.png").contains("check that its folder exists");
    }

    @Test
    void withoutACommandTheUsageIsShown() {
        CommandRun run = CommandRun.of();

        assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run.err()).contains("Usage: tapwright", "taps", "choose a command");
    }

    @Test
    void helpReachesEveryCommand() {
        assertThat(CommandRun.of("help", "sitting", "add").out()).contains("--humidity", "--taken");
        assertThat(CommandRun.of("help").out()).contains("Exit codes");
        assertThat(CommandRun.of("help", "sitting", "sing").code()).isEqualTo(ExitCode.WRONG_USE);
    }
}
