package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.tapwright.audio.WavSamples;
import io.github.tapwright.audio.WavWriter;
import io.github.tapwright.level.Sound;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LevelCommandTest {

    private static final Path TAPS = CommandRun.DEMO.resolve("36-2024-06-11-in-the-white.flac");

    @TempDir
    Path folder;

    @Test
    void withoutACalibrationTheFiguresAreReFullScaleAndSoneSaysWhyNot() throws IOException {
        CommandRun run = CommandRun.of("level", SoundFile.sine(folder.resolve("a.wav"), 1000, 0));

        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("Levels (dB re full scale)", "Third-octave bands (dB re full scale, average)")
                .containsPattern("LAeq +−3\\.0 ")
                .containsPattern("1000 +−3\\.0\\n")
                .contains("channel 1: none, because loudness in sone needs sound pressure; record a calibrator")
                .contains("  - the loudness range needs about a minute of sound")
                .contains("  - levels are relative to full scale; only a calibration makes them sound pressure levels");
    }

    /** A sine of 997 Hz at full scale in one channel reads −3.01 LUFS: [BS1770], annex 1. */
    @Test
    void programmeLoudnessIsInLufs() throws IOException {
        CommandRun run = CommandRun.of("level", SoundFile.sine(folder.resolve("a.wav"), 997, 0));

        assertThat(run.out()).containsPattern("−3\\.0 +LUFS +integrated");
    }

    /** 1 kHz at 60 dB in a free field: 60 phon by definition, printed as 4.019 sone in [ISO532-1], signal 3. */
    @Test
    void theCalibratorsToneMakesPhonAndSoneOfAToneOfSixtyDecibels() throws IOException {
        JsonNode document =
                json(SoundFile.sine(folder.resolve("quiet.wav"), 1000, -20 - 34), "--calibration", tone() + "=94");

        assertThat(document.path("calibrated").booleanValue()).isTrue();
        assertThat(document.path("reference").textValue()).isEqualTo("dB re 20 µPa");
        assertThat(document.path("laeq_db").doubleValue()).isCloseTo(60, within(0.01));
        assertThat(document.path("stationary_loudness_sone").doubleValue()).isCloseTo(4.019, within(0.01));
        assertThat(document.path("loudness_level_phon").doubleValue()).isCloseTo(60, within(0.1));
        assertThat(document.path("calibration").path("full_scale_level_u_db").doubleValue())
                .isCloseTo(0.25 / Math.sqrt(3), within(0.001));
    }

    @Test
    void whatTheCalibrationHoldsForStandsBesideTheResult() throws IOException {
        CommandRun run = CommandRun.of("level", TAPS, "--calibration", tone() + "=94:0.5");

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .startsWith("Calibrated by " + folder.resolve("tone.wav"))
                .contains("tone of 94 ± 0.5 dB at 1000.0 Hz", "full scale is 117.01 ± 0.29 dB re 20 µPa")
                .contains("holds for one microphone, input and gain alone: microphone unknown, gain unknown")
                .contains("Levels (dB re 20 µPa)")
                .containsPattern("N5 \\(sone\\) +\\d+\\.\\d\\d ");
    }

    @Test
    void theDiffuseFieldIsAnotherLoudness() throws IOException {
        Path tone = tone();
        double free = json(tone, "--calibration", tone + "=94")
                .path("loudness_sone_max")
                .doubleValue();
        JsonNode diffuse = json(tone, "--calibration", tone + "=94", "--field", "diffuse");

        assertThat(diffuse.path("settings").path("sound_field").textValue()).isEqualTo("diffuse");
        assertThat(diffuse.path("loudness_sone_max").doubleValue()).isGreaterThan(free + 1);
    }

    @Test
    void everyChannelHasItsColumnAndTheLoudestStandsAtTheTop() throws IOException {
        Path stereo =
                SoundFile.write(folder.resolve("stereo.wav"), SoundFile.sine(1000, -40), SoundFile.sine(1000, -20));
        CommandRun run = CommandRun.of("level", stereo, "--calibration", tone() + "=94");
        JsonNode document = json(stereo);

        assertThat(run.out())
                .containsPattern("channel 1 +channel 2")
                .containsPattern("LAeq +74\\.0 +94\\.0 ")
                .contains("applied to all 2 channels; trust that of the calibrated microphone alone");
        assertThat(document.path("channel_used").intValue()).isEqualTo(2);
        assertThat(document.path("laeq_db").doubleValue()).isCloseTo(-23.01, within(0.01));
        assertThat(document.path("channel_levels")).hasSize(2);
    }

    @Test
    void severalFilesAreAnArrayInTheirOrder() throws IOException {
        JsonNode documents = json(tone(), TAPS);

        assertThat(documents.isArray()).isTrue();
        assertThat(documents)
                .extracting(d -> d.path("file").textValue())
                .containsExactly(folder.resolve("tone.wav").toString(), TAPS.toString());
    }

    @Test
    void thePictureIsWrittenWhereItIsAskedFor() throws IOException {
        Path picture = folder.resolve("bands.svg");
        CommandRun run = CommandRun.of("level", TAPS, "--calibration", tone() + "=94", "--plot", picture);

        assertThat(run.err()).contains("wrote " + picture);
        assertThat(Files.readString(picture)).contains("Third-octave levels (dB re 20 µPa)", "60 phon");
    }

    @Test
    void silenceHasNothingUsableAndTheOutputSaysSo() throws IOException {
        Path silence = SoundFile.write(folder.resolve("silence.wav"), new double[48_000]);
        CommandRun run = CommandRun.of("level", silence, "--plot", folder.resolve("none.png"));

        assertThat(run.code()).isEqualTo(ExitCode.NOTHING_USABLE);
        assertThat(run.out()).contains("there is no sound at all in the recording; check input and gain");
        assertThat(run.err()).contains("nothing usable was found in " + silence, "no picture written");
        assertThat(folder.resolve("none.png")).doesNotExist();
    }

    @Test
    void aNoteCannotCalibrateAndTheRefusalSaysWhatCan() throws IOException {
        Path note = SoundFile.sine(folder.resolve("note.wav"), 82.41, -20);
        CommandRun run = CommandRun.of("level", TAPS, "--calibration", note + "=94", "--json");

        assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .startsWith("tapwright: " + note + ": this recording cannot calibrate: the tone lies at 82.4 Hz")
                .contains("record a calibrator of 1 kHz or 250 Hz")
                .hasLineCount(1);
    }

    @Test
    void aRecordingSampledTooSlowlyIsNamedWithARemedy() throws IOException {
        Path slow = folder.resolve("slow.wav");
        WavWriter.write(slow, Recording.of(new SampleRate(4000), Sound.sine(4000, 2, 100, -6)), WavSamples.INT_16);
        CommandRun run = CommandRun.of("level", slow);

        assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
        assertThat(run.err())
                .contains("slow.wav", "record again at 44100 or 48000")
                .hasLineCount(1);
    }

    @ParameterizedTest
    @CsvSource({
        "--calibration, tone.wav, tone.wav=94",
        "--calibration, tone.wav=9.4, 70 to 140",
        "--calibration, tone.wav=loud, 94:0.5",
        "--calibrated-by, first, 'numbered 1, 2, 3'",
        "--field, near, FREE",
        "--plot, bands.jpg, .png or .svg"
    })
    void wrongUseSaysWhatWouldBeRight(String option, String value, String remedy) {
        CommandRun run = CommandRun.of("level", TAPS, option, value);

        assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("tapwright: ").contains(remedy).hasLineCount(1);
    }

    @Test
    void twoCalibrationsAtOnceAreRefused() {
        CommandRun run = CommandRun.of("level", TAPS, "--calibration", "tone.wav=94", "--calibrated-by", "1");

        assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run.err()).contains("mutually exclusive").hasLineCount(1);
    }

    @Test
    void aPictureOfSixRecordingsIsRefusedBeforeAnythingIsMeasured() {
        CommandRun run = CommandRun.of("level", TAPS, TAPS, TAPS, TAPS, TAPS, TAPS, "--plot", folder.resolve("a.png"));

        assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run.err()).contains("5 recordings at most").hasLineCount(1);
    }

    private Path tone() throws IOException {
        return SoundFile.sine(folder.resolve("tone.wav"), 1000, -20);
    }

    private static JsonNode json(Object... arguments) throws JsonProcessingException {
        Object[] line = new Object[arguments.length + 2];
        line[0] = "level";
        System.arraycopy(arguments, 0, line, 1, arguments.length);
        line[line.length - 1] = "--json";
        CommandRun run = CommandRun.of(line);
        assertThat(run.code()).as(run.err()).isZero();
        return new ObjectMapper().readTree(run.out());
    }
}
