package io.github.tapwright.level.loudness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.level.Sound;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Loudness of changing sounds against the largest loudness of signals 6 to 8 and 10 to 12 of [ISO532-1], annex B.
 *
 * <p>The standard gives these signals as sound files only, which are not ours to pass on. Assumed here: levels
 * rising over 10 s, pulses with cosine edges of 2 ms. Tolerance of the standard: 5 % or 0.1 sone.
 */
class ChangingLoudnessReferenceTest {

    private static final double EDGE_SECONDS = 0.002;

    @ParameterizedTest
    @CsvSource({"signal_6, 250", "signal_7, 1000", "signal_8, 4000"})
    void tonesRisingFrom30To80Decibels(String name, double frequencyHz) {
        double[] rising =
                Sound.of(48_000, 10, t -> Math.pow(10, (5 * t - 70) / 20) * Math.sin(2 * Math.PI * frequencyHz * t));
        assertMaximum(name, Heard.free(48_000, rising));
    }

    @ParameterizedTest
    @CsvSource({"signal_10, 0.01", "signal_11, 0.05", "signal_12, 0.5"})
    void pulsesOfOneKilohertzAt70Decibels(String name, double seconds) {
        double[] pulse = Sound.joined(
                new double[4800],
                Sound.of(
                        48_000,
                        seconds,
                        t -> edge(Math.min(t, seconds - t))
                                * Math.pow(10, -30 / 20.0)
                                * Math.sin(2 * Math.PI * 1000 * t)),
                new double[24_000]);
        assertMaximum(name, Heard.free(48_000, pulse));
    }

    private static double edge(double secondsInside) {
        return secondsInside >= EDGE_SECONDS ? 1 : 0.5 - 0.5 * Math.cos(Math.PI * secondsInside / EDGE_SECONDS);
    }

    private static void assertMaximum(String name, HeardLoudness heard) {
        double expected = Published.at("annexB", name).required("Nmax").asDouble();
        System.out.printf("%s: largest %.3f sone for %.3f%n", name, heard.maximumSone(), expected);
        assertThat(heard.maximumSone()).isCloseTo(expected, within(Math.max(0.05 * expected, 0.1)));
    }
}
