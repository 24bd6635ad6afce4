package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.archive.Archive;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.live.CaptureNotes;
import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.tap.TapSettings;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** What {@code record} does without a microphone; with one it is tested in the package microphone. */
class RecordCommandTest {

    @TempDir
    Path folder;

    private CommandRun run(Object... arguments) {
        Object[] all = Arrays.copyOf(arguments, arguments.length + 2);
        all[arguments.length] = "--archive";
        all[arguments.length + 1] = folder.resolve("archive");
        return CommandRun.of(all);
    }

    private void addInstrument() {
        assertThat(run("instrument", "add", "T-17", "--kind", "classical").code())
                .isZero();
    }

    @Test
    void withoutAnArchiveThereIsNothingToRecordInto() {
        assertThat(run("record", "T-17", "--seconds", "1").code()).isEqualTo(ExitCode.ARCHIVE);
    }

    @Test
    void whatCannotBeIsRefusedBeforeAnythingIsOpened() {
        addInstrument();

        assertThat(run("record").code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run("record", "T-17", "--rate", "8000").err()).contains("44100, 48000 or 96000");
        assertThat(run("record", "T-17", "--seconds", "0").code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run("record", "T-17", "--procedure", "notes", "--taps", "3").err())
                .contains("--taps counts strikes");
        assertThat(run("record", "nobody's", "--seconds", "1").err()).contains("no instrument has the shop number");
        assertThat(run("record", "--export", "x.wav").code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run("record", "--waiting", "--recover", "1").code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run("record", "T-17", "--seconds", "1", "--device", "no such input")
                        .code())
                .isIn(ExitCode.WRONG_USE, ExitCode.UNREADABLE);
    }

    @Test
    void recordingsThatDoNotWaitCannotBeRecovered() {
        addInstrument();

        assertThat(run("record", "--waiting").out()).contains("No recording waits");
        assertThat(run("record", "--recover", "7").err()).contains("no recording 7 waits");
        assertThat(run("record", "--recover", "0").code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run("record", "--set-aside", "7").code()).isEqualTo(ExitCode.WRONG_USE);
    }

    @Test
    void verifyNamesARecordingThatWaitsAndTheWayToKeepIt() {
        addInstrument();
        try (Archive archive = Archive.open(folder.resolve("archive"), Clock.systemUTC())) {
            archive.captures()
                    .begin(new CaptureNotes(
                            new ShopNumber("T-17"),
                            new Procedure.BodyTaps(TapSettings.STANDARD),
                            Conditions.UNKNOWN,
                            "a microphone",
                            LiveFormat.STANDARD,
                            Clock.systemUTC().instant()))
                    .close();
        }

        CommandRun verified = run("verify");

        assertThat(verified.code()).isEqualTo(ExitCode.DONE);
        assertThat(verified.out())
                .contains("a recording that waits to be kept: captures", "record --recover 1")
                .contains("Everything is as it should be.");
    }

    @Test
    void aStrikeIsSetAsideAndTakenBack() {
        addInstrument();
        Path taps = CommandRun.DEMO.resolve("31-2024-04-09-strung.flac");
        assertThat(run("sitting", "add", "T-17", taps).code()).isZero();

        assertThat(run("sitting", "reanalyse", "1", "--set-aside", "3").code()).isZero();
        String without = run("sitting", "show", "1").out();
        String json = run("sitting", "show", "1", "--json").out();
        assertThat(run("sitting", "reanalyse", "1").out()).contains("every figure is the same");
        assertThat(run("sitting", "reanalyse", "1", "--band", "60:900").code()).isZero();
        String otherBand = run("sitting", "show", "1").out();
        assertThat(run("sitting", "reanalyse", "1", "--use-all").code()).isZero();

        assertThat(without).contains("rejected: set aside by the maker");
        assertThat(json).contains("\"set_aside\"");
        assertThat(otherBand).contains("set aside by the maker");
        assertThat(run("sitting", "show", "1").out()).doesNotContain("set aside by the maker");
        assertThat(run("sitting", "reanalyse", "1", "--set-aside", "99").err()).contains("there is no strike 99");
    }

    static List<String> documented() throws IOException {
        try (Stream<String> lines = Files.lines(Path.of("docs/guide/recording.md"))) {
            return lines.filter(l -> l.startsWith("./tapwright "))
                    .map(l -> l.substring("./tapwright ".length()))
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("documented")
    void everyCommandOfTheGuideIsUnderstood(String command) {
        StringWriter nowhere = new StringWriter();
        Terminal terminal = new Terminal(new PrintWriter(nowhere), new PrintWriter(nowhere), Progress.SILENT);
        CommandLine line = Commands.of(new Bench(Clock::systemUTC, Path.of(".")), terminal);
        String[] words = Pattern.compile("\"[^\"]*\"|\\S+")
                .matcher(command)
                .results()
                .map(MatchResult::group)
                .toArray(String[]::new);

        assertThat(line.parseArgs(words).subcommand()).isNotNull();
    }
}
