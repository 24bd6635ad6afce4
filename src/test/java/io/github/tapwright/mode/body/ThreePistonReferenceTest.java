package io.github.tapwright.mode.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.mode.HoleState;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Body A with a live back of 0.035 m², 150 g and 200 Hz.
 *
 * <p>Source: derived, exact for the stated model; computed once independently of this code. Tolerance: half a
 * unit of the last digit given.
 */
class ThreePistonReferenceTest {

    private static final CoupledBody BODY = Bodies.A_WITH_BACK;

    private static double frequency(int index) {
        return BODY.poles().get(index).frequencyHz();
    }

    @Test
    void frequencies() {
        assertThat(BODY.poles()).hasSize(3);
        assertThat(frequency(0)).isCloseTo(107.4650, within(5.1e-5));
        assertThat(frequency(1)).isCloseTo(182.6879, within(5.1e-5));
        assertThat(frequency(2)).isCloseTo(213.6709, within(5.1e-5));
    }

    @Test
    void sumAndProduct() {
        double sum = BODY.poles().stream()
                .mapToDouble(p -> p.frequencyHz() * p.frequencyHz())
                .sum();
        assertThat(sum).isCloseTo(90578.868, within(5.1e-4));
        assertThat(frequency(0) * frequency(1) * frequency(2)).isCloseTo(4194908.01, within(0.0051));
    }

    @ParameterizedTest
    @CsvSource({"0, 0.2250, -4.2935", "1, -0.3790, 0.5828", "2, 1.3307, 1.2769"})
    void volumesMoved(int index, double back, double hole) {
        List<Double> ratios = BODY.volumeRatios(frequency(index));
        assertThat(ratios).hasSize(3);
        assertThat(ratios.get(0)).isEqualTo(1);
        assertThat(ratios.get(1)).isCloseTo(back, within(5.1e-5));
        assertThat(ratios.get(2)).isCloseTo(hole, within(5.1e-5));
    }

    @Test
    void holeCovered() {
        List<Pole> poles = BODY.with(HoleState.COVERED).poles();
        assertThat(poles).hasSize(2);
        assertThat(poles.get(0).frequencyHz()).isCloseTo(177.0362, within(5.1e-5));
        assertThat(poles.get(1).frequencyHz()).isCloseTo(207.5523, within(5.1e-5));
    }

    @ParameterizedTest
    @CsvSource({"110, 180, 122.1406", "184, 213, 208.1510"})
    void antiresonancesOfTheTop(double low, double high, double frequency) {
        double at = Extremum.minimum(f -> BODY.topMobility(f).norm(), low, high);
        assertThat(at).isCloseTo(frequency, within(5.1e-5));
    }
}
