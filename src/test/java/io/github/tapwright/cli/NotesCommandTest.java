package io.github.tapwright.cli;

import static io.github.tapwright.cli.PlayedRun.DEAD_FRET;
import static io.github.tapwright.cli.PlayedRun.NOTES;
import static io.github.tapwright.cli.PlayedRun.RATE_HZ;
import static io.github.tapwright.cli.PlayedRun.note;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.tapwright.audio.WavSamples;
import io.github.tapwright.audio.WavWriter;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Notes, runs and plucks from real WAV files through the real commands. */
class NotesCommandTest {

    @TempDir
    Path folder;

    private Path run(String name, double[]... notes) throws IOException {
        return PlayedRun.write(folder.resolve(name), notes);
    }

    private static JsonNode json(CommandRun run) throws IOException {
        return new ObjectMapper().readTree(run.out());
    }

    @Test
    void aNoteHasItsPitchItsNameAndItsDecay() throws IOException {
        Path file = run("a.wav", note(110.5, 2, 1, 1));

        JsonNode document = json(CommandRun.of("note", file, "--json"));

        assertThat(document.path("pitch_hz").doubleValue()).isCloseTo(110.5, within(0.02));
        assertThat(document.path("pitch_u_hz").doubleValue()).isBetween(1e-6, 0.05);
        assertThat(document.path("nearest_note").textValue()).isEqualTo("A2");
        assertThat(document.path("cents").doubleValue()).isCloseTo(7.85, within(0.3));
        assertThat(document.path("partials").path(0).path("decay_time_s").doubleValue())
                .isCloseTo(2, within(0.1));
        assertThat(document.path("method_version").textValue()).startsWith("note-");
        assertThat(CommandRun.of("note", file).out()).contains("A2 +7.", "Partials (±");
    }

    @Test
    void thePartialsOfNotesAreWrittenAsATable() throws IOException {
        Path file = run("a.wav", note(110.5, 2, 1, 1));
        Path csv = folder.resolve("partials.csv");
        int partials = json(CommandRun.of("note", file, "--json", "--csv", csv))
                .path("partials")
                .size();

        assertThat(Files.readAllLines(csv))
                .hasSize(partials + 1)
                .element(0)
                .asString()
                .contains("late_decay_time_s");
        assertThat(CommandRun.of("note", file, "--csv", file).err()).contains("must end in .csv");
    }

    @Test
    void anotherTuningNoteMovesTheCents() throws IOException {
        Path file = run("a.wav", note(110.5, 2, 1, 1));
        JsonNode document = json(CommandRun.of("note", file, "--json", "--a4", "442", "--expect", "A2"));
        assertThat(document.path("cents").doubleValue()).isCloseTo(0, within(0.3));
    }

    @Test
    void aSlipInANoteNameIsRefusedWithARemedy() throws IOException {
        Path file = run("a.wav", note(110.5, 2, 1, 1));
        CommandRun run = CommandRun.of("note", file, "--expect", "H7");
        assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run.err()).contains("'H7' is no note", "such as E2 or Bb3").hasLineCount(1);
    }

    @Test
    void silenceHasNoPitch() throws IOException {
        Path file = run("silence.wav", new double[(int) RATE_HZ]);
        CommandRun run = CommandRun.of("note", file);
        assertThat(run.code()).isEqualTo(ExitCode.NOTHING_USABLE);
        assertThat(run.out()).contains("cannot tell");
    }

    @Test
    void aRunIsLaidOverTheFingerboardAndItsDeadNotePointedOut() throws IOException {
        Path file = PlayedRun.stringWithADeadFret(folder.resolve("run.wav"));
        Path csv = folder.resolve("run.csv");

        JsonNode document = json(CommandRun.of("fingerboard", file, "--json", "--csv", csv));

        assertThat(document.path("notes").size()).isEqualTo(NOTES);
        for (int fret = 0; fret < NOTES; fret++) {
            JsonNode note = document.path("notes").path(fret);
            assertThat(note.path("string").intValue()).isEqualTo(6);
            assertThat(note.path("fret").intValue()).isEqualTo(fret);
            assertThat(note.path("pitch_error_cents").doubleValue()).isCloseTo(0, within(0.5));
        }
        assertThat(document.path("judged_places").intValue()).isEqualTo(NOTES);
        assertThat(document.path("fast_decays").size()).isEqualTo(1);
        assertThat(document.path("fast_decays")
                        .path(0)
                        .path("near_resonance_hz")
                        .isNull())
                .isTrue();
        assertThat(document.path("fast_decays").path(0).path("fret").intValue()).isEqualTo(DEAD_FRET);
        assertThat(Files.readAllLines(csv)).hasSize(NOTES + 1);
        assertThat(CommandRun.of("fingerboard", file).out())
                .contains("string 6, fret 6 (116.5 Hz)", "Early decay time", "Pitch off the fret");
    }

    @Test
    void aDashComesWithItsReasonAndNothingJudgedIsSaid() throws IOException {
        String text = CommandRun.of("fingerboard", run("short.wav", note(82.4, 9, 1, 1), note(164.8, 9, 1, 2)))
                .out();
        assertThat(text)
                .contains("No note could be judged", "the reasons stand below their map")
                .containsPattern("– string \\d fret \\d+.*: too short: only \\d+ dB of decay");
    }

    @Test
    void twoInstrumentsAreComparedByTheirPlucks() throws IOException {
        double[][] soft = new double[6][];
        double[][] loud = new double[6][];
        for (int i = 0; i < 6; i++) {
            double scatter = 1 + 0.02 * (i % 3 - 1);
            soft[i] = note(i < 3 ? 110 : 146.8324, 3, 0.4 * scatter, 20 + i);
            loud[i] = note(i < 3 ? 110 : 146.8324, 3, 0.56 * scatter, 20 + i);
        }
        Path a = run("a.wav", soft);
        Path b = run("b.wav", loud);

        JsonNode document = json(CommandRun.of("plucks", a, "--against", b, "--json"));

        JsonNode levels = document.path("comparisons").path(0);
        assertThat(levels.path("unit").textValue()).isEqualTo("dB(A)");
        assertThat(levels.path("strings").path(0).path("p").isNumber()).isTrue();
        assertThat(levels.path("strings").size()).isEqualTo(2);
        assertThat(levels.path("overall").doubleValue()).isCloseTo(20 * Math.log10(1.4), within(0.1));
        assertThat(document.path("caution").textValue()).contains("Setting up and plucking again is not in them");
        assertThat(CommandRun.of("plucks", a, "--against", b).out())
                .contains(
                        "mean over the strings: +2.9",
                        "this cannot know",
                        "DIFFERS",
                        "Setting up and plucking again is not in them");
    }

    @Test
    void withACalibratorPlucksHaveTheirLoudnessInSone() throws IOException {
        double[] tone = new double[(int) (6 * RATE_HZ)];
        for (int n = 0; n < tone.length; n++) {
            tone[n] = 0.1 * Math.sin(2 * Math.PI * 1000 * n / RATE_HZ);
        }
        Path calibrator = folder.resolve("tone.wav");
        WavWriter.write(calibrator, Recording.of(new SampleRate(RATE_HZ), tone), WavSamples.INT_24);
        Path plucks = run("a.wav", note(110, 3, 0.4, 1));

        JsonNode document = json(CommandRun.of("plucks", plucks, "--calibration", calibrator + "=94", "--json"));

        assertThat(document.path("level_unit").textValue()).isEqualTo("dB re 20 µPa");
        assertThat(document.path("a").path(0).path("loudness_sone_max").doubleValue())
                .isBetween(5.0, 60.0);
        assertThat(json(CommandRun.of("plucks", plucks, "--json"))
                        .path("a")
                        .path(0)
                        .path("loudness_sone_max")
                        .isNull())
                .isTrue();
    }

    @Test
    void anUnknownOrderIsRefusedInOneLine() throws IOException {
        CommandRun run = CommandRun.of("fingerboard", run("a.wav", note(110, 3, 0.4, 1)), "--order", "sideways");
        assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run.err())
                .contains("string-by-string or lowest-fret, not 'sideways'")
                .hasLineCount(1);
    }

    @Test
    void onePluckAStringCannotTell() throws IOException {
        Path a = run("a.wav", note(110, 3, 0.4, 1));
        Path b = run("b.wav", note(110, 3, 0.6, 2));
        assertThat(CommandRun.of("plucks", a, "--against", b).out())
                .contains("cannot tell: two plucks at least are needed on each side");
    }
}
