package io.github.tapwright.mode.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.mode.HoleState;
import io.github.tapwright.validation.PublishedRow;
import io.github.tapwright.validation.PublishedTable;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Body A with a live back of 0.035 m², 150 g and 200 Hz.
 *
 * <p>Source: derived by matrices in another program, exact for the stated model. Tolerance: the eight digits on
 * which the two agree; antiresonances half a tenth of a millihertz, because a search finds them.
 */
class ThreePistonReferenceTest {

    private static final CoupledBody BODY = Bodies.A_WITH_BACK;
    private static final Percentage EIGHT_DIGITS = Percentage.withPercentage(2e-6);
    private static final List<PublishedRow> ROWS =
            PublishedTable.rows("body/three-piston.csv").toList();

    @Test
    void frequenciesAndVolumesMoved() {
        List<Pole> poles = BODY.poles();
        assertThat(poles).hasSameSizeAs(ROWS);
        for (int i = 0; i < ROWS.size(); i++) {
            double frequency = poles.get(i).frequencyHz();
            assertThat(frequency).isCloseTo(ROWS.get(i).number("frequency_hz"), EIGHT_DIGITS);
            List<Double> ratios = BODY.volumeRatios(frequency);
            assertThat(ratios).hasSize(3);
            assertThat(ratios.get(0)).isEqualTo(1);
            assertThat(ratios.get(1)).isCloseTo(ROWS.get(i).number("back_flow"), EIGHT_DIGITS);
            assertThat(ratios.get(2)).isCloseTo(ROWS.get(i).number("hole_flow"), EIGHT_DIGITS);
        }
    }

    /** f1·f2·f3 = f_top·f_back·f_h, an identity of the model. */
    @Test
    void product() {
        double product = BODY.poles().stream().mapToDouble(Pole::frequencyHz).reduce(1, (a, b) -> a * b);
        assertThat(product).isCloseTo(165 * 200 * BODY.helmholtzFrequencyHz(), EIGHT_DIGITS);
    }

    @Test
    void holeCovered() {
        List<Pole> poles = BODY.with(HoleState.COVERED).poles();
        assertThat(poles).hasSize(2);
        assertThat(poles.get(0).frequencyHz()).isCloseTo(ROWS.get(0).number("covered_hz"), EIGHT_DIGITS);
        assertThat(poles.get(1).frequencyHz()).isCloseTo(ROWS.get(1).number("covered_hz"), EIGHT_DIGITS);
    }

    @ParameterizedTest
    @CsvSource({"0, 110, 180", "1, 184, 213"})
    void antiresonancesOfTheTop(int index, double low, double high) {
        double at = Extremum.minimum(f -> BODY.topMobility(f).norm(), low, high);
        assertThat(at).isCloseTo(ROWS.get(index).number("antiresonance_hz"), within(5e-5));
    }
}
