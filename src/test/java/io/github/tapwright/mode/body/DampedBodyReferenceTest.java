package io.github.tapwright.mode.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.validation.PublishedRow;
import io.github.tapwright.validation.PublishedTable;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Body A with a top of Q 30 and an air plug of Q 50.
 *
 * <p>Source: derived by matrices in another program, exact for the stated model. Tolerance: the eight digits on
 * which the two agree; places of extrema half a tenth of a millihertz, because a top is flat.
 */
class DampedBodyReferenceTest {

    private static final CoupledBody BODY = Bodies.A_DAMPED;
    private static final Percentage EIGHT_DIGITS = Percentage.withPercentage(2e-6);

    static Stream<PublishedRow> extrema() {
        return PublishedTable.rows("body/damped-extrema.csv");
    }

    @Test
    void poles() {
        List<PublishedRow> rows = PublishedTable.rows("body/damped-poles.csv").toList();
        assertThat(BODY.poles()).hasSameSizeAs(rows);
        for (int i = 0; i < rows.size(); i++) {
            PublishedRow row = rows.get(i);
            Pole pole = BODY.poles().get(i);
            assertThat(pole.decayRatePerSecond()).isCloseTo(row.number("decay_rate_per_s"), EIGHT_DIGITS);
            assertThat(pole.dampedFrequencyHz()).isCloseTo(row.number("damped_frequency_hz"), EIGHT_DIGITS);
            assertThat(pole.frequencyHz()).isCloseTo(row.number("frequency_hz"), EIGHT_DIGITS);
            assertThat(pole.q()).isCloseTo(row.number("q"), EIGHT_DIGITS);
            assertThat(pole.decayTimeSeconds()).isCloseTo(row.number("decay_time_s"), EIGHT_DIGITS);
            Complex residue = BODY.pressureResidue(pole, 1);
            assertThat(residue.getReal()).isCloseTo(row.number("residue_real_pa_per_ns"), EIGHT_DIGITS);
            assertThat(residue.getImaginary()).isCloseTo(row.number("residue_imaginary_pa_per_ns"), EIGHT_DIGITS);
        }
    }

    /** Among them: the far-field minimum lies well above the Helmholtz frequency of 127 Hz, the mobility's on it. */
    @ParameterizedTest
    @MethodSource("extrema")
    void extremaOfMobilityAndPressure(PublishedRow row) {
        DoubleUnaryOperator curve = row.text("curve").equals("mobility")
                ? f -> BODY.topMobility(f).norm()
                : f -> BODY.pressurePerNewton(f, 1).norm();
        double low = row.number("low_hz");
        double high = row.number("high_hz");
        double at = row.text("kind").equals("maximum")
                ? Extremum.maximum(curve, low, high)
                : Extremum.minimum(curve, low, high);
        assertThat(at).isCloseTo(row.number("frequency_hz"), within(5e-5));
        assertThat(curve.applyAsDouble(at)).isCloseTo(row.number("height"), EIGHT_DIGITS);
    }

    /** ρ·A/(4πr·m) = 1.2·0.040/(4π·0.080), five digits. */
    @Test
    void plateauOfThePressure() {
        assertThat(BODY.plateauPressurePerNewton(1)).isCloseTo(0.047746, within(5.1e-7));
    }
}
