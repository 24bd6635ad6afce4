package io.github.tapwright.cli;

import static io.github.tapwright.cli.PlayedRun.note;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A calibration with a wrong level is withdrawn: nothing new rests on it, and what rested on it says so. */
class WithdrawCalibrationTest {

    private static final String WRONG = "114 was typed";
    private static final String REASON = "withdrawn (" + WRONG + ")";

    @TempDir
    static Path made;

    @TempDir
    Path folder;

    private ArchiveRun bench;

    /** Calibration 1 claims 114 dB of a calibrator of 94; sittings 1 and 3 of guitar 41 and 2 of 42 rest on it. */
    @BeforeAll
    static void fill() throws IOException {
        ArchiveRun bench = ArchiveRun.with("41", made);
        bench.done("instrument", "add", "42");
        SoundFile.sine(tone(), 1000, -20);
        bench.done("calibration", "add", tone(), "--level", "114", "--taken", "2026-03-01");
        plucks(bench, "41", 0.2, "2026-03-02");
        plucks(bench, "42", 0.3, "2026-03-02");
        plucks(bench, "41", 0.21, "2026-03-05");
    }

    private static Path tone() {
        return made.resolve("tone.wav");
    }

    private static void plucks(ArchiveRun bench, String guitar, double gain, String day) throws IOException {
        Path file = PlayedRun.write(
                made.resolve(guitar + "-" + day + ".wav"),
                note(110, 3, gain, 1),
                note(110, 3, gain * 1.1, 2),
                note(82.4069, 3, gain, 4),
                note(82.4069, 3, gain * 1.1, 5));
        bench.addPlayed(guitar, "plucks", file, "--calibrated-by", 1, "--gain", "4", "--taken", day);
    }

    @BeforeEach
    void copy() throws IOException {
        bench = ArchiveRun.in(made).copiedTo(folder);
    }

    private CommandRun withdraw() {
        return bench.done("calibration", "withdraw", "1", "--because", WRONG);
    }

    @Test
    void itIsListedAsWithdrawnAndWhatRestsOnItIsNamedWithARemedy() throws IOException {
        assertThat(withdraw().out())
                .startsWith("Calibration 1, 2026-03-01, tone.wav, is withdrawn: " + WRONG)
                .contains("no sound pressure levels now: 1 2 3\n", "tapwright sitting reanalyse 1 2 3\n");

        assertThat(bench.done("calibration", "list").out()).contains("withdrawn: " + WRONG);
        JsonNode listed = bench.json("calibration", "list").path(0);
        assertThat(listed.path("withdrawn").asText()).isEqualTo(WRONG);
        assertThat(listed.path("withdrawn_since").asText()).startsWith("2026-03-14");
        assertThat(bench.done("verify").out()).contains("Everything is as it should be.");
    }

    @Test
    void nothingNewUsesIt() {
        withdraw();

        for (String command : List.of(
                "sitting add 41 " + made.resolve("41-2026-03-02.wav") + " --procedure plucks --calibrated-by 1",
                "record 41 --procedure plucks --calibrated-by 1",
                "level " + made.resolve("41-2026-03-02.wav") + " --calibrated-by 1",
                "sitting reanalyse 1 --calibrated-by 1")) {
            CommandRun run = bench.run((Object[]) command.split(" "));
            assertThat(run.code()).as(command).isEqualTo(ExitCode.WRONG_USE);
            assertThat(run.err())
                    .as(command)
                    .contains(
                            "calibration 1 is " + REASON, "choose another, or take it back with calibration withdraw 1")
                    .hasLineCount(1);
        }
    }

    @Test
    void levelsThatRestOnItAreNoSoundPressureLevelsAnyMore() throws IOException {
        String before = bench.done("sitting", "show", "1").out();
        assertThat(before).contains("dB re 20 µPa by calibration 1");
        JsonNode calibrated = analysis();
        assertThat(calibrated.path("calibration_withdrawn").isNull()).isTrue();

        withdraw();

        assertThat(bench.done("sitting", "show", "1").out())
                .contains("dB by calibration 1, which is " + REASON)
                .contains("These are no sound pressure levels", "tapwright sitting reanalyse 1")
                .doesNotContain("20 µPa");
        assertThat(analysis().path("calibration_withdrawn").asText()).isEqualTo(WRONG);
        assertThat(analysis().path("plucks").findValuesAsText("lafmax_db"))
                .isEqualTo(calibrated.path("plucks").findValuesAsText("lafmax_db"));
        assertThat(analysis().path("plucks").findValues("loudness_sone_max")).allMatch(JsonNode::isNull);
        bench.done("calibration", "withdraw", "1", "--take-back");
        assertThat(bench.done("sitting", "show", "1").out()).isEqualTo(before);
    }

    @Test
    void reportsDoNotCallThemSoundPressureLevels() throws IOException {
        withdraw();

        for (String kind : List.of("client", "workshop")) {
            Path report = folder.resolve(kind + ".html");
            bench.done("report", "1", "--kind", kind, "--out", report);
            String text = Files.readString(report);
            assertThat(text.contains("withdrawn")).as(kind).isTrue();
            assertThat(text.contains("20 µPa")).as(kind).isFalse();
        }
    }

    @Test
    void theyAreComparedWithNothingAndTheAnswerSaysWhy() {
        assertThat(bench.done("trend", "41").out()).contains("plucks, level (dB): 9");
        withdraw();

        assertThat(bench.run("compare", "1", "2").out())
                .contains("the calibration of sitting 1 is " + REASON, "sitting reanalyse 1");
        assertThat(bench.run("trend", "41").out())
                .contains("sitting 1 left out: its calibration is " + REASON, "sitting 3 left out");
        assertThat(bench.run("repeatability", "1", "2", "3").code()).isEqualTo(ExitCode.WRONG_USE);
    }

    @Test
    void aCorrectionOfTheConditionsMeasuresNoLevelsAnew() throws IOException {
        withdraw();

        bench.done("sitting", "edit", "1", "--hole", "covered");
        bench.done("sitting", "edit", "1", "--hole", "covered");

        assertThat(bench.done("sitting", "show", "1").out())
                .contains("hole covered", "by calibration 1, which is " + REASON)
                .doesNotContain("analysis 2");
    }

    @Test
    void measuredAnewWithoutItTheyAreLevelsReFullScale() throws IOException {
        double claimed = level();
        withdraw();

        CommandRun anew = bench.done("sitting", "reanalyse", "1", "2", "3");

        assertThat(anew.out()).contains("Sitting 1: analysis 2 by method", "4 plucks in dB re full scale", REASON);
        assertThat(level()).isCloseTo(claimed - 137.01, within(0.02));
        assertThat(bench.done("sitting", "show", "1").out())
                .contains("dB re full scale", "analysis 2 of 2")
                .doesNotContain("withdrawn");
        assertThat(bench.done("trend", "41").out())
                .contains("plucks, level (dB): −4")
                .doesNotContain("withdrawn");
        assertThat(bench.done("sitting", "reanalyse", "1").out()).contains("every figure is the same");
        assertThat(withdraw().out()).contains("no sitting rests on it");
    }

    @Test
    void measuredAnewByTheRightOneTheyAreSoundPressureLevelsAgain() throws IOException {
        double claimed = level();
        withdraw();
        bench.done("calibration", "add", tone(), "--level", "94");

        bench.done("sitting", "reanalyse", "1", "2", "--calibrated-by", "2");

        assertThat(level()).isCloseTo(claimed - 20, within(0.02));
        assertThat(bench.done("compare", "1", "2").out()).doesNotContain("withdrawn");
        assertThat(bench.run("sitting", "reanalyse", "--all", "--calibrated-by", "2")
                        .err())
                .contains("--calibrated-by goes with numbers of sittings of plucks alone");
    }

    @Test
    void exportsAndBackupsCarryIt() throws IOException {
        withdraw();
        Path tables = folder.resolve("tables");
        bench.done("export", tables);
        bench.done("backup", folder.resolve("copy.zip"));
        CommandRun.of("restore", folder.resolve("copy.zip"), folder.resolve("again"));

        assertThat(Files.readAllLines(tables.resolve("plucks.csv")))
                .hasSize(13)
                .first()
                .asString()
                .contains("calibration,calibration_withdrawn");
        assertThat(Files.readAllLines(tables.resolve("plucks.csv")).stream().skip(1))
                .allMatch(line -> line.contains(",1," + WRONG));
        assertThat(Files.readAllLines(tables.resolve("calibrations.csv")).get(1))
                .contains(WRONG);
        assertThat(new ArchiveRun(folder.resolve("again"))
                        .done("calibration", "list")
                        .out())
                .contains("withdrawn: " + WRONG);
    }

    @Test
    void withdrawingNeedsACalibrationAndAReason() {
        assertThat(bench.run("calibration", "withdraw", "1").err()).contains("--because", "--take-back");
        assertThat(bench.run("calibration", "withdraw", "7", "--because", WRONG).err())
                .contains("there is no calibration 7");
        assertThat(bench.run("calibration", "withdraw", "1", "--take-back").err())
                .contains("calibration 1 is not withdrawn");
    }

    private JsonNode analysis() throws IOException {
        return bench.json("sitting", "show", "1").path("analyses").path(0);
    }

    private double level() throws IOException {
        JsonNode analyses = bench.json("sitting", "show", "1").path("analyses");
        return analyses.path(analyses.size() - 1)
                .path("plucks")
                .path(0)
                .path("lafmax_db")
                .asDouble();
    }
}
