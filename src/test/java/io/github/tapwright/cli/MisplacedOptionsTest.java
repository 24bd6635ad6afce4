package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a command has no use for is refused with a remedy, and never left aside in silence. */
class MisplacedOptionsTest {

    private static final Path TAPS = CommandRun.DEMO.resolve("31-2024-04-09-strung.flac");

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "compare --group kind --shop-window 45:55, --shop-window; leave them out",
        "report 1 --stage strung, --stage goes with --group",
        "report --trend 31 --stage strung, --stage goes with --group",
        "report --group kind --spread 0.3:5:1, --spread goes with a sitting of taps",
        "report 1 --despite wood, --despite goes with --against",
        "report --trend 31 --despite wood, --despite goes with --against",
        "report 1 --shop-window 45:55, --shop-window goes with --against or --trend",
        "report --group kind --shop-window 45:55, --shop-window goes with --against or --trend",
        "repeatability --keep, --keep keeps the study of the sittings given; give their numbers",
        "level taps.flac --field diffuse, --field is for loudness in sone",
        "plucks taps.flac --frets 20, --frets is for a run of notes",
        "sitting add 31 taps.flac --procedure plucks --frets 20, --frets is for a run of notes",
        "record --recover 1 --rate 96000, --rate does not go with --recover; leave one of them out",
        "record --recover 1 --procedure notes, --procedure does not go with --recover",
        "record --recover 1 --band 60:900, --band does not go with --recover",
        "record --recover 1 --taps 3, --taps does not go with --recover",
        "record 31 --recover 1 --export a.wav, INSTRUMENT does not go with --export",
        "record --recover 1 --export a.wav --hole open, --hole does not go with --export",
        "record --waiting --json, --json does not go with --waiting",
        "record 31 --waiting, INSTRUMENT does not go with --waiting",
        "record --list-devices --seconds 3, --seconds does not go with --list-devices",
        "record --set-aside 1 --note tired, --note does not go with --set-aside"
    })
    void isRefusedWithARemedy(String line, String remedy) {
        done("instrument", "add", "31");

        CommandRun run = run((Object[]) line.split(" "));

        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run.err()).startsWith("tapwright: ").contains(remedy).hasLineCount(1);
    }

    @Test
    void aRecoveredRecordingTakesItsInstrumentAndConditions() {
        done("instrument", "add", "31");

        assertThat(run("record", "31", "--recover", "7", "--hole", "open", "--json")
                        .err())
                .contains("no recording 7 waits");
    }

    @Test
    void strikesAreSetAsideInSittingsForTapsOnly() throws Exception {
        done("instrument", "add", "31");
        done("sitting", "add", "31", TAPS);
        Path run = PlayedRun.write(folder.resolve("run.wav"), PlayedRun.note(110, 3, 1, 1));
        done("sitting", "add", "31", run, "--procedure", "notes");

        assertThat(run("sitting", "reanalyse", 2, "--set-aside", 1).err())
                .contains("sitting 2 is not for taps", "leave --set-aside out");
        assertThat(run("sitting", "reanalyse", 2, "--use-all").code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(done("sitting", "reanalyse", "--all", "--use-all").out())
                .contains("Sitting 1: every figure is the same", "Sitting 2: left out, it is not for taps");
    }

    private CommandRun done(Object... arguments) {
        CommandRun run = run(arguments);
        assertThat(run.code()).as(run.err()).isZero();
        return run;
    }

    private CommandRun run(Object... arguments) {
        List<Object> all = new ArrayList<>();
        for (Object argument : arguments) {
            all.add(argument.equals("taps.flac") ? TAPS : argument);
        }
        all.add("--archive");
        all.add(folder.resolve("archive"));
        return CommandRun.of(all.toArray());
    }
}
