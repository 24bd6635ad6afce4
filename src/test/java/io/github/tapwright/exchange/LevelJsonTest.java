package io.github.tapwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.tapwright.level.Calibration;
import io.github.tapwright.level.CalibrationCheck;
import io.github.tapwright.level.CalibratorTone;
import io.github.tapwright.level.LevelAnalysis;
import io.github.tapwright.level.LevelReport;
import io.github.tapwright.level.LevelSettings;
import io.github.tapwright.level.Sound;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.sitting.AppliedCalibration;
import io.github.tapwright.sitting.MeasuredLevels;
import io.github.tapwright.sitting.SoundFacts;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LevelJsonTest {

    private static final double RATE_HZ = 48_000;
    private static final List<String> LEVELS = List.of(
            "laeq_db",
            "lceq_db",
            "lzeq_db",
            "lafmax_db",
            "lasmax_db",
            "lae_db",
            "lcpeak_db",
            "lufs_integrated",
            "lufs_momentary_max",
            "lufs_short_term_max");
    private static final List<String> LOUDNESS =
            List.of("loudness_sone_max", "loudness_sone_n5", "loudness_level_phon", "stationary_loudness_sone");

    @Test
    void withoutACalibrationLevelsAreNumbersAndLoudnessIsNullWithItsReason() throws JsonProcessingException {
        JsonNode document = parse(LevelJson.each(List.of(relative("a.wav", 4, -20)), Optional.empty()));

        assertThat(document.path("file").textValue()).isEqualTo("a.wav");
        assertThat(document.path("calibrated").isBoolean()).isTrue();
        assertThat(document.path("calibrated").booleanValue()).isFalse();
        assertThat(LEVELS)
                .allSatisfy(
                        key -> assertThat(document.path(key).isDouble()).as(key).isTrue());
        assertThat(LOUDNESS)
                .allSatisfy(
                        key -> assertThat(document.path(key).isNull()).as(key).isTrue());
        assertThat(document.path("calibration").isNull()).isTrue();
        assertThat(document.path("warnings").toString()).contains("the file is odd", "no loudness in sone and phon:");
        assertThat(document.path("method_version").textValue()).isEqualTo(LevelAnalysis.METHOD_VERSION);
        assertThat(document.path("settings").path("sound_field").textValue()).isEqualTo("free");
    }

    @Test
    void theTopHoldsEachLevelUnderItsOwnKey() throws JsonProcessingException {
        JsonNode document = parse(LevelJson.each(List.of(relative("a.wav", 4, -20)), Optional.empty()));

        assertThat(document.path("lzeq_db").doubleValue()).isCloseTo(-23.01, within(0.01));
        assertThat(document.path("lcpeak_db").doubleValue()).isCloseTo(-20, within(0.3));
        assertThat(document.path("lae_db").doubleValue()
                        - document.path("laeq_db").doubleValue())
                .isCloseTo(10 * Math.log10(4), within(1e-9));
        assertThat(document.path("true_peak_dbfs").doubleValue()).isCloseTo(-20, within(0.1));
    }

    @Test
    void aCalibrationMakesLoudnessAndSaysWhatItHoldsFor() throws JsonProcessingException {
        double[] tone = Sound.sine(RATE_HZ, 4, 1000, -20);
        Calibration calibration =
                (Calibration) CalibrationCheck.of(tone, new SampleRate(RATE_HZ), CalibratorTone.classOne(94));
        MeasuredLevels measured = measured("a.wav", tone, LevelSettings.calibrated(calibration));
        JsonNode document =
                parse(LevelJson.each(List.of(measured), Optional.of(AppliedCalibration.of("tone.wav", calibration))));

        assertThat(document.path("calibrated").booleanValue()).isTrue();
        assertThat(LOUDNESS)
                .allSatisfy(
                        key -> assertThat(document.path(key).isDouble()).as(key).isTrue());
        assertThat(document.path("laeq_db").doubleValue()).isCloseTo(94, within(0.001));
        assertThat(document.path("calibration").path("tone_file").textValue()).isEqualTo("tone.wav");
        assertThat(document.path("calibration").path("id").isNull()).isTrue();
        assertThat(document.path("calibration").path("microphone").isNull()).isTrue();
        assertThat(document.path("warnings").toString())
                .contains("the file is odd")
                .doesNotContain("no loudness in sone");
    }

    @Test
    void theBandsBearTheirNominalNames() throws JsonProcessingException {
        JsonNode bands = parse(LevelJson.each(List.of(relative("a.wav", 4, -20)), Optional.empty()))
                .path("third_octaves");

        assertThat(bands).hasSize(31);
        assertThat(bands.path(2).path("band_hz").doubleValue()).isEqualTo(31.5);
        assertThat(bands.path(17).path("band_hz").doubleValue()).isEqualTo(1000);
        assertThat(bands.path(17).path("level_db").doubleValue()).isCloseTo(-23, within(0.1));
    }

    @Test
    void whatIsTooShortForAFigureHasNullAndSaysWhy() throws JsonProcessingException {
        JsonNode document = parse(LevelJson.each(List.of(relative("a.wav", 0.3, -20)), Optional.empty()));

        assertThat(document.path("lufs_integrated").isNull()).isTrue();
        assertThat(document.path("lufs_short_term_max").isNull()).isTrue();
        assertThat(document.path("warnings").toString()).contains("shorter than 0.4 s", "shorter than 3 s");
    }

    @Test
    void silenceHasEveryKeyAndNoFigure() throws JsonProcessingException {
        MeasuredLevels silence = measured("a.wav", new double[48_000], LevelSettings.RELATIVE);
        JsonNode document = parse(LevelJson.each(List.of(silence), Optional.empty()));

        assertThat(LEVELS).allSatisfy(key -> {
            assertThat(document.has(key)).as(key).isTrue();
            assertThat(document.path(key).isNull()).as(key).isTrue();
        });
        assertThat(document.path("third_octaves")).isEmpty();
    }

    @Test
    void severalFilesAreAnArray() throws JsonProcessingException {
        JsonNode documents =
                parse(LevelJson.each(List.of(relative("a.wav", 1, -20), relative("b.wav", 1, -20)), Optional.empty()));

        assertThat(documents).extracting(d -> d.path("file").textValue()).containsExactly("a.wav", "b.wav");
    }

    private static MeasuredLevels relative(String name, double seconds, double peakDb) {
        return measured(name, Sound.sine(RATE_HZ, seconds, 1000, peakDb), LevelSettings.RELATIVE);
    }

    private static MeasuredLevels measured(String name, double[] samples, LevelSettings settings) {
        LevelReport report = LevelAnalysis.of(Recording.of(new SampleRate(RATE_HZ), samples).stream(), settings);
        SoundFacts facts =
                new SoundFacts("invented", RATE_HZ, 1, 0, samples.length / RATE_HZ, List.of("the file is odd"));
        return new MeasuredLevels(name, facts, report);
    }

    private static JsonNode parse(String json) throws JsonProcessingException {
        return new ObjectMapper().readTree(json);
    }
}
