package io.github.tapwright.mode.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Body A with a top of Q 30 and an air plug of Q 50.
 *
 * <p>Source: derived, exact for the stated model; computed once independently of this code. Tolerance: half a
 * unit of the last digit given.
 */
class DampedBodyReferenceTest {

    private static final CoupledBody BODY = Bodies.A_DAMPED;

    private static double mobility(double frequencyHz) {
        return BODY.topMobility(frequencyHz).norm();
    }

    private static double pressure(double frequencyHz) {
        return BODY.pressurePerNewton(frequencyHz, 1).norm();
    }

    @ParameterizedTest
    @CsvSource({
        "0, 9.54437, 109.91339, 109.92389, 36.182, 0.72375",
        "1, 15.72147, 190.79326, 190.80966, 38.129, 0.43938"
    })
    void poles(int index, double sigma, double damped, double undamped, double q, double decayTime) {
        Pole pole = BODY.poles().get(index);
        assertThat(pole.decayRatePerSecond()).isCloseTo(sigma, within(5.1e-6));
        assertThat(pole.dampedFrequencyHz()).isCloseTo(damped, within(5.1e-6));
        assertThat(pole.frequencyHz()).isCloseTo(undamped, within(5.1e-6));
        assertThat(pole.q()).isCloseTo(q, within(5.1e-4));
        assertThat(pole.decayTimeSeconds()).isCloseTo(decayTime, within(5.1e-6));
    }

    @ParameterizedTest
    @CsvSource({"100, 120, 109.821, 0.11020", "180, 200, 190.829, 0.33095"})
    void peaksOfTheTopsMobility(double low, double high, double frequency, double height) {
        double at = Extremum.maximum(DampedBodyReferenceTest::mobility, low, high);
        assertThat(at).isCloseTo(frequency, within(5.1e-4));
        assertThat(mobility(at)).isCloseTo(height, within(5.1e-6));
    }

    @Test
    void minimumOfTheTopsMobility() {
        double at = Extremum.minimum(DampedBodyReferenceTest::mobility, 115, 180);
        assertThat(at).isCloseTo(127.173, within(5.1e-4));
        assertThat(mobility(at)).isCloseTo(9.84e-4, within(5.1e-7));
    }

    @ParameterizedTest
    @CsvSource({"100, 120, 110.008, 0.8595", "180, 200, 190.810, 2.7243"})
    void peaksOfThePressure(double low, double high, double frequency, double height) {
        double at = Extremum.maximum(DampedBodyReferenceTest::pressure, low, high);
        assertThat(at).isCloseTo(frequency, within(5.1e-4));
        assertThat(pressure(at)).isCloseTo(height, within(5.1e-5));
    }

    @Test
    void minimumOfThePressureIsNotTheHelmholtzFrequency() {
        double at = Extremum.minimum(DampedBodyReferenceTest::pressure, 115, 180);
        assertThat(at).isCloseTo(134.624, within(5.1e-4));
        assertThat(pressure(at)).isCloseTo(0.1416, within(5.1e-5));
    }

    @Test
    void plateauOfThePressure() {
        assertThat(BODY.plateauPressurePerNewton(1)).isCloseTo(0.04775, within(5.1e-6));
    }
}
