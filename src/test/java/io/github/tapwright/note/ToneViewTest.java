package io.github.tapwright.note;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ToneViewTest {

    @Test
    void oneSineHasFallenBy60DecibelsAfterItsDecayTime() {
        ToneView view = new ToneView(new double[] {0.3, -0.1, 2 * Math.PI * 110, Math.log(2.5)});
        assertThat(view.wholeDecayTimeSeconds(0.08))
                .isCloseTo(Math.log(1000) / 2.5, within(1e-12))
                .isEqualTo(view.decayTimeSeconds(0), within(1e-12));
    }

    /** From a fast sine that is all there is, over both alike, to a slow one that is all there is. */
    @ParameterizedTest
    @CsvSource({"10, 0.6, 0.001", "80, 0.4, 0.1", "4, 3.9, 1", "30, 0.5, 1e-5", "3, 1, 100"})
    void ofTwoSinesThePowerHasFallenBy60Decibels(double fast, double slow, double slowAmplitude) {
        double before = 0.05;
        ToneView view = new ToneView(new double[] {1, 0, 0, slowAmplitude, 690, Math.log(fast), 692, Math.log(slow)});
        double seconds = view.wholeDecayTimeSeconds(before);
        assertThat(powerAt(seconds - before, fast, slow, slowAmplitude))
                .isCloseTo(
                        1e-6 * powerAt(-before, fast, slow, slowAmplitude),
                        within(1e-17 * (1 + slowAmplitude * slowAmplitude)));
    }

    private static double powerAt(double seconds, double fast, double slow, double slowAmplitude) {
        return Math.exp(-2 * fast * seconds) + slowAmplitude * slowAmplitude * Math.exp(-2 * slow * seconds);
    }
}
