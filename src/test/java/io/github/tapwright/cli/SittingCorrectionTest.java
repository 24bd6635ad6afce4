package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Correcting a sitting and computing it anew: what was there before stays. */
class SittingCorrectionTest {

    private static final Path RECORDING = CommandRun.DEMO.resolve("33-2024-05-14-strung.flac");

    @TempDir
    Path folder;

    @BeforeEach
    void putTheInstrumentOnTheShelf() {
        done("instrument", "add", "33");
    }

    @Test
    void aCorrectionOfASittingKeepsWhatItReplaces() {
        String id = added("--humidity", "24", "--gain", "12 o'clock");

        CommandRun run = done("sitting", "edit", id, "--humidity", "42", "--hole", "covered");

        assertThat(run.out())
                .contains("relative humidity 42 %; soundhole covered", "gain 12 o'clock")
                .contains("before a correction: relative humidity 24 %; gain 12 o'clock");
        assertThat(done("sitting", "show", id).out()).contains("analysis 2 of 2"); // the hole decides names
    }

    @Test
    void reanalysisInAnotherBandStandsBesideTheFirst() {
        String id = added();

        assertThat(done("sitting", "reanalyse", id, "--band", "80:300").out()).contains("analysis 2 by method taps-");
        assertThat(done("sitting", "show", id).out()).contains("analysis 2 of 2");
    }

    @Test
    void whateverWasWrittenDownCanBeTakenBack() {
        String id = added(words("--stage strung --temperature 20 --humidity 24 --rested 48 --strings damped"
                + " --string-set EJ45 --strings-fitted 2026-03-01 --hole open --distance 300 --gain 4 --note cold"));

        CommandRun run = done(words("sitting edit " + id
                + " --stage unknown --temperature Unknown --humidity= --rested unknown --strings unknown"
                + " --string-set unknown --strings-fitted unknown --hole unknown --distance unknown --gain unknown"
                + " --note="));

        assertThat(run.out())
                .contains("nothing written down")
                .contains("before a correction: strung; 20 °C; relative humidity 24 %; in this air for 48 h");
    }

    @Test
    void whatIsKnownOfAnInstrumentCanBeTakenBack() {
        done(words("instrument edit 33 --scale 650 --strings 6 --core-mm 1.5 --construction wood-sandwich"));

        assertThat(done(words("instrument edit 33 --scale unknown --strings= --core-mm unknown --construction unknown"))
                        .out())
                .containsPattern("scale length +unknown")
                .containsPattern("strings +unknown")
                .containsPattern("core +unknown")
                .containsPattern("top +unknown");
    }

    private static Object[] words(String line) {
        return line.split(" ");
    }

    @Test
    void stringsThatAreOffLeaveNeitherTheirSetNorItsDay() {
        String id = added("--strings", "damped", "--string-set", "EJ45", "--strings-fitted", "2026-03-01");

        CommandRun run = done("sitting", "edit", id, "--strings", "off");

        assertThat(run.out())
                .contains("strings off\n")
                .contains("taken back, string set EJ45 and strings fitted on 2026-03-01")
                .contains("before a correction: strings damped; string set EJ45; strings fitted on 2026-03-01");
        assertThat(done("sitting", "edit", id, "--strings", "off").out()).doesNotContain("taken back");
    }

    @Test
    void whatIsNeitherAFigureNorUnknownIsRefused() {
        String id = added();

        assertThat(run("sitting", "edit", id, "--humidity", "42,5").err()).contains("'42,5' is no number such as 21.5");
        assertThat(run("sitting", "edit", id, "--strings-fitted", "1.3.2026").err())
                .contains("is no day such as");
        assertThat(run("instrument", "edit", "33", "--strings", "six").err()).contains("is no whole number such as 6");
        assertThat(run("instrument", "edit", "33", "--kind", "unknown").code()).isEqualTo(ExitCode.WRONG_USE);
    }

    @Test
    void aWrongDateCanBePutRightAndWhatItReplacesStays() {
        String id = added("--taken", "2025-01-02", "--humidity", "42");

        CommandRun run = done("sitting", "edit", id, "--taken", "2026-01-02");

        assertThat(run.out())
                .contains("Sitting " + id + " of instrument 33, 2026-01-02\n")
                .contains("before a correction: 2025-01-02; relative humidity 42 %");
        assertThat(done("sitting", "list").out()).contains("2026-01-02").doesNotContain("2025-01-02");
        assertThat(done("sitting", "show", id).out()).contains("2026-01-02").contains("analysis 1 of 1");
        assertThat(done("trend", "33").out()).contains("2026-01-02").doesNotContain("2025-01-02");
        assertThat(done("verify").out()).contains("Everything is as it should be.");
    }

    @Test
    void daysThatCannotBeAreRefusedWithARemedy() {
        String id = added("--taken", "2026-01-02", "--strings", "damped", "--strings-fitted", "2026-01-02");

        for (Object[] wrong : List.of(
                words("sitting edit " + id + " --strings-fitted 2026-01-03"),
                words("sitting edit " + id + " --taken 2026-01-01"),
                words("sitting add 33 " + RECORDING + " --taken 2026-01-02 --strings-fitted 2026-05-01"))) {
            assertThat(run(wrong).err())
                    .contains("cannot have been struck on", "leave the day of the strings out")
                    .hasLineCount(1);
        }
        for (String command : List.of("sitting edit " + id, "sitting add 33 " + RECORDING)) {
            assertThat(run(words(command + " --taken 2026-04-01")).err())
                    .contains("still to come, today is 2026-03-14; give the day it was recorded")
                    .hasLineCount(1);
            assertThat(run(words(command + " --taken 1026-03-14")).err())
                    .contains("lies before the year 1900; give the day")
                    .hasLineCount(1);
        }
        assertThat(done("sitting", "list").out()).contains("2026-01-02");
        // the world's days begin before the workshop's
        done("sitting", "edit", id, "--taken", "2026-03-15");
    }

    @Test
    void anotherSoundholeIsAnalysedAnewAndSaysSo() {
        String id = added("--hole", "open");

        assertThat(done("sitting", "edit", id, "--hole", "covered").out()).contains("analysed anew", "analysis 2;");
        assertThat(done("sitting", "edit", id, "--hole", "open", "--humidity", 40)
                        .out())
                .contains("analysis 3;");
        // only a covered hole forbids names
        assertThat(done("sitting", "edit", id, "--hole", "unknown").out())
                .contains("analysed anew for this soundhole: every name and every figure is the same");
        assertThat(done("sitting", "edit", id, "--humidity", 41).out()).doesNotContain("analysed");
    }

    @Test
    void aCorrectionWhoseAnalysisFailsIsKeptAndSaysThatNamesAreStillThoseFromBefore() throws IOException {
        String id = added("--hole", "open");
        Path original = original();
        Path away = folder.resolve("away");
        Files.move(original, away);

        CommandRun failed = run("sitting", "edit", id, "--hole", "covered");

        assertThat(failed.code()).isNotZero();
        assertThat(failed.out())
                .contains("soundhole covered\n", "names and figures are still those from before", "soundhole open\n");
        Files.move(away, original);
        assertThat(done("sitting", "edit", id, "--hole", "covered").out()).contains("analysis 2;");
    }

    private Path original() throws IOException {
        try (Stream<Path> files = Files.walk(folder.resolve("archive").resolve("originals"))) {
            return files.filter(f -> f.toString().endsWith(".flac")).findAny().orElseThrow();
        }
    }

    /** Adds a sitting with some conditions; gives its number. */
    private String added(Object... conditions) {
        List<Object> all = new ArrayList<>(List.of("sitting", "add", "33", RECORDING));
        all.addAll(List.of(conditions));
        String added = done(all.toArray()).out();
        return added.substring("Sitting ".length(), added.indexOf(" of instrument"));
    }

    private CommandRun done(Object... arguments) {
        CommandRun run = run(arguments);
        assertThat(run.code()).as(run.err()).isZero();
        return run;
    }

    private CommandRun run(Object... arguments) {
        List<Object> all = new ArrayList<>(List.of(arguments));
        all.add("--archive");
        all.add(folder.resolve("archive"));
        return CommandRun.of(all.toArray());
    }
}
