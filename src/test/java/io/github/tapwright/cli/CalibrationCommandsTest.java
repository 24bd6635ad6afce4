package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Calibrations kept and used, with real tones and a real archive. */
class CalibrationCommandsTest {

    @TempDir
    Path folder;

    private Path tone = Path.of("");

    @BeforeEach
    void recordATone() throws IOException {
        tone = SoundFile.sine(folder.resolve("tone.wav"), 1000, -20);
    }

    @Test
    void aKeptCalibrationIsListedAndMeasuresLevels() throws IOException {
        CommandRun added = onArchive(
                "calibration",
                "add",
                tone,
                "--level",
                "94",
                "--gain",
                "input 1, knob at 4",
                "--microphone",
                "measuring microphone 3",
                "--taken",
                "2026-03-10");
        CommandRun listed = onArchive("calibration", "list");
        CommandRun measured =
                onArchive("level", SoundFile.sine(folder.resolve("quiet.wav"), 1000, -40), "--calibrated-by", "1");

        assertThat(added.code()).as(added.err()).isZero();
        assertThat(added.out())
                .startsWith("Kept as calibration 1, 2026-03-10, tone.wav")
                .contains("microphone measuring microphone 3, gain input 1, knob at 4");
        assertThat(listed.out())
                .containsPattern("1 +2026-03-10 +94 dB +117\\.01 ± 0\\.14 +measuring microphone 3 +input 1, knob at 4");
        assertThat(measured.code()).as(measured.err()).isZero();
        assertThat(measured.out())
                .startsWith("Calibrated by calibration 1, 2026-03-10, tone.wav")
                .contains(
                        "holds for one microphone, input and gain alone: microphone measuring microphone 3, gain input")
                .containsPattern("LAeq +74\\.0 ");
    }

    @Test
    void whatNobodyWroteDownIsUnknownAndTheTimeIsNow() throws IOException {
        onArchive("calibration", "add", tone, "--level", "114:0.5");

        assertThat(onArchive("calibration", "list").out())
                .containsPattern("1 +2026-03-14 09:26 +114 dB +137\\.01 ± 0\\.29 +unknown +unknown");
    }

    @Test
    void jsonHasTheFiguresAndTheFingerprintOfTheTone() throws IOException {
        onArchive("calibration", "add", tone, "--level", "94");
        JsonNode all = new ObjectMapper()
                .readTree(onArchive("calibration", "list", "--json").out());
        JsonNode level = new ObjectMapper()
                .readTree(onArchive("level", tone, "--calibrated-by", "1", "--json")
                        .out());

        assertThat(all).hasSize(1);
        assertThat(all.path(0).path("sha256").textValue()).hasSize(64);
        assertThat(all.path(0).path("full_scale_level_db").doubleValue()).isCloseTo(117.01, within(0.01));
        assertThat(all.path(0).path("gain").isNull()).isTrue();
        assertThat(level.path("calibration").path("id").intValue()).isEqualTo(1);
        assertThat(level.path("laeq_db").doubleValue()).isCloseTo(94, within(0.01));
    }

    @Test
    void aNoteIsRefusedAndNothingIsKept() throws IOException {
        Path note = SoundFile.sine(folder.resolve("note.wav"), 110, -20);
        CommandRun run = onArchive("calibration", "add", note, "--level", "94");

        assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
        assertThat(run.err())
                .contains("note.wav: this recording cannot calibrate", "110.0 Hz")
                .hasLineCount(1);
        assertThat(onArchive("calibration", "list").out()).contains("No calibrations yet");
        assertThat(onArchive("verify").out()).contains("0 originals", "Everything is as it should be.");
    }

    @Test
    void aDayThatCannotBeIsRefused() {
        CommandRun run = onArchive("calibration", "add", tone, "--level", "94", "--taken", "2126-03-14");
        assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run.err())
                .contains("a calibration on 2126-03-14 is still to come")
                .hasLineCount(1);
        assertThat(onArchive("calibration", "list").out()).contains("No calibrations yet");
    }

    @Test
    void verifyBackupRestoreAndExportIncludeTheTone() throws IOException {
        onArchive("calibration", "add", tone, "--level", "94");
        CommandRun verified = onArchive("verify");
        CommandRun backedUp = onArchive("backup", folder.resolve("copy.zip"));
        CommandRun restored = CommandRun.of("restore", folder.resolve("copy.zip"), folder.resolve("again"));
        CommandRun measured =
                CommandRun.of("level", tone, "--calibrated-by", "1", "--archive", folder.resolve("again"));
        onArchive("export", folder.resolve("tables"));

        assertThat(verified.code()).isZero();
        assertThat(verified.out()).contains("1 original read, 1 calibration", "Everything is as it should be.");
        assertThat(backedUp.code()).isZero();
        assertThat(restored.code()).as(restored.err()).isZero();
        assertThat(measured.out()).containsPattern("LAeq +94\\.0 ");
        assertThat(folder.resolve("tables/calibrations.csv")).content().contains("tone_level_db", "tone.wav");
        assertThat(folder.resolve("tables/archive.json")).content().contains("\"calibrations\" : [ {");
    }

    @Test
    void whatIsNotThereIsSaidOnOneLine() throws IOException {
        onArchive("calibration", "add", tone, "--level", "94");
        CommandRun unknown = onArchive("level", tone, "--calibrated-by", "7");
        CommandRun noArchive =
                CommandRun.of("level", tone, "--calibrated-by", "1", "--archive", folder.resolve("slip"));

        assertThat(unknown.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(unknown.err())
                .contains("no calibration 7", "calibration list")
                .hasLineCount(1);
        assertThat(noArchive.code()).isEqualTo(ExitCode.ARCHIVE);
        assertThat(folder.resolve("slip")).doesNotExist();
        assertThat(onArchive("calibration", "add", tone).err())
                .contains("--level")
                .hasLineCount(1);
        assertThat(onArchive("calibration", "add", tone, "--level", "94", "--taken", "soon")
                        .err())
                .contains("2026-03-14")
                .hasLineCount(1);
        assertThat(onArchive("calibration").code()).isEqualTo(ExitCode.WRONG_USE);
    }

    private CommandRun onArchive(Object... arguments) {
        List<Object> all = new ArrayList<>(List.of(arguments));
        all.add("--archive");
        all.add(folder.resolve("archive"));
        return CommandRun.of(all.toArray());
    }
}
