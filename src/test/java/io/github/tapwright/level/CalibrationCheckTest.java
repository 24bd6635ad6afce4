package io.github.tapwright.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.level.CalibrationRefusal.Reason;
import io.github.tapwright.recording.SampleRate;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Calibrator tones, good and bad, with known truth. */
class CalibrationCheckTest {

    private static final double RATE_HZ = 44_100;
    private static final CalibratorTone TONE = CalibratorTone.classOne(94);
    private static final double W = 2 * Math.PI * 1000;

    private static CalibrationResult check(double seconds, DoubleUnaryOperator sound) {
        return CalibrationCheck.of(Sound.of(RATE_HZ, seconds, sound), new SampleRate(RATE_HZ), TONE);
    }

    private static Reason refusal(CalibrationResult result) {
        assertThat(result).isInstanceOf(CalibrationRefusal.class);
        CalibrationRefusal refusal = (CalibrationRefusal) result;
        assertThat(refusal.found()).isNotBlank();
        assertThat(refusal.reason().remedy()).isNotBlank();
        return refusal.reason();
    }

    @ParameterizedTest
    @CsvSource({"94, 1000, 0.1", "114, 1000, 0.5", "94, 250, 0.05", "94, 1010, 0.01", "114, 251.2, 0.9"})
    void aGoodToneCalibrates(double levelDb, double frequencyHz, double amplitude) {
        double[] samples = Sound.sine(RATE_HZ, 10, frequencyHz, 20 * Math.log10(amplitude));
        CalibrationResult result =
                CalibrationCheck.of(samples, new SampleRate(RATE_HZ), CalibratorTone.classOne(levelDb));
        assertThat(result).isInstanceOfSatisfying(Calibration.class, c -> {
            double truth = levelDb - 10 * Math.log10(amplitude * amplitude / 2);
            assertThat(c.fullScaleLevelDb()).isCloseTo(truth, within(0.001));
            assertThat(c.toneFrequencyHz()).isCloseTo(frequencyHz, within(0.005));
            assertThat(c.fullScaleLevel().standardUncertainty()).isCloseTo(0.25 / Math.sqrt(3), within(0.001));
            assertThat(c.fluctuationDb()).isLessThan(0.01);
            assertThat(c.impurityPercent()).isLessThan(0.1);
            assertThat(c.unit()).isEqualTo("dB re 20 µPa");
            assertThat(c.methodVersion()).isEqualTo(CalibrationCheck.METHOD_VERSION);
        });
    }

    /** Noise and hum under the tone must not count as its level; nor may fitting the calibrator. */
    @Test
    void noiseAndHandlingAtTheEndsAreLeftOut() {
        Random random = new Random(3);
        CalibrationResult result = check(12, t -> {
            double handling = t < 1 || t > 11 ? 0.8 * random.nextGaussian() * 0.3 : 0;
            double room = 0.0004 * random.nextGaussian() + 0.0005 * Math.sin(2 * Math.PI * 50 * t) + 0.01;
            return (t < 1 || t > 11 ? 0 : 0.1 * Math.sin(W * t)) + handling + room;
        });
        assertThat(result).isInstanceOfSatisfying(Calibration.class, c -> {
            assertThat(c.fullScaleLevelDb()).isCloseTo(94 + 20 + 10 * Math.log10(2), within(0.01));
            assertThat(c.steadySeconds()).isBetween(9.7, 10.0);
            assertThat(c.impurityPercent()).isCloseTo(100 * 0.000533 / 0.0707, within(0.1));
        });
    }

    @Test
    void silenceIsTooQuiet() {
        assertThat(refusal(check(10, t -> 0))).isEqualTo(Reason.TOO_QUIET);
        assertThat(refusal(check(10, t -> 1e-5 * Math.sin(W * t)))).isEqualTo(Reason.TOO_QUIET);
        assertThat(refusal(check(0, t -> 0))).isEqualTo(Reason.TOO_QUIET);
        assertThat(check(10, t -> 0))
                .isInstanceOfSatisfying(
                        CalibrationRefusal.class,
                        r -> assertThat(r.found()).isEqualTo("the recording is below −80 dB re full scale"));
    }

    @Test
    void aClippedToneIsRefused() {
        assertThat(refusal(check(10, t -> Math.max(-1, Math.min(1, 1.2 * Math.sin(W * t))))))
                .isEqualTo(Reason.CLIPPED);
    }

    @Test
    void aToneThatIsShortOrFadesIsUnsteady() {
        assertThat(refusal(check(2, t -> 0.1 * Math.sin(W * t)))).isEqualTo(Reason.UNSTEADY);
        assertThat(refusal(check(10, t -> 0.1 * Math.exp(-t / 4) * Math.sin(W * t))))
                .isEqualTo(Reason.UNSTEADY);
        assertThat(refusal(check(10, t -> 0.1 * (1 + 0.03 * Math.sin(3 * t)) * Math.sin(W * t))))
                .isEqualTo(Reason.UNSTEADY);
    }

    @ParameterizedTest
    @CsvSource({"440", "980", "1020", "240", "2000"})
    void anotherToneIsRefused(double frequencyHz) {
        assertThat(refusal(check(10, t -> 0.1 * Math.sin(2 * Math.PI * frequencyHz * t))))
                .isEqualTo(Reason.WRONG_FREQUENCY);
    }

    @Test
    void distortionAndNoiseAreRefused() {
        assertThat(refusal(check(10, t -> 0.1 * Math.sin(W * t) + 0.005 * Math.sin(2 * W * t))))
                .isEqualTo(Reason.IMPURE);
        Random random = new Random(4);
        assertThat(refusal(check(10, t -> 0.1 * Math.sin(W * t) + 0.005 * random.nextGaussian())))
                .isEqualTo(Reason.IMPURE);
    }

    @Test
    void levelsNoCalibratorMakesAreRefused() {
        assertThatThrownBy(() -> CalibratorTone.classOne(9.4)).hasMessageContaining("70 to 140");
        assertThatThrownBy(() -> new CalibratorTone(94, 0)).hasMessageContaining("tolerance");
    }
}
