package io.github.tapwright.mode.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.mode.HoleState;
import java.util.List;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Top and air plug without losses, rigid back.
 *
 * <p>Source: derived, exact for the stated model (ρ = 1.2 kg/m³, c = 343 m/s); computed once independently of
 * this code. Tolerance: half a unit of the last digit given.
 */
class TwoPistonReferenceTest {

    private static final Percentage SIX_DIGITS = Percentage.withPercentage(5e-4);
    private static final Offset<Double> HALF_MILLIHERTZ = within(0.00051);

    private static CoupledBody body(String name) {
        return switch (name) {
            case "A" -> Bodies.A;
            case "B" -> Bodies.B;
            default -> Bodies.C;
        };
    }

    @ParameterizedTest
    @CsvSource({
        "A, 0.07475, 0.00567450, 1.00842e7, 5.09003e-4, 85984",
        "B, 0.08936, 0.00810732, 8.60846e6, 8.69364e-4, 85362",
        "C, 0.07475, 0.00567450, 1.00842e7, 5.09003e-4, 57046"
    })
    void parts(String name, double length, double area, double airStiffness, double airMass, double topStiffness) {
        CoupledBody body = body(name);
        assertThat(body.hole().effectiveLengthMetres()).isCloseTo(length, within(1e-9));
        assertThat(body.hole().areaSquareMetres()).isCloseTo(area, SIX_DIGITS);
        assertThat(body.air().stiffnessPascalsPerCubicMetre(body.volumeCubicMetres()))
                .isCloseTo(airStiffness, SIX_DIGITS);
        assertThat(body.hole().airMassKilograms(body.air())).isCloseTo(airMass, SIX_DIGITS);
        assertThat(body.top().stiffnessNewtonsPerMetre()).isCloseTo(topStiffness, within(0.51));
    }

    @ParameterizedTest
    @CsvSource({
        "A, 127.118, 71.4753, 179.816, 109.921, 190.814",
        "B, 128.398, 59.1487, 165.902, 112.325, 177.180",
        "C, 127.118, 101.711, 198.104, 101.832, 212.213"
    })
    void frequencies(String name, double helmholtz, double airSpring, double closed, double lower, double upper) {
        CoupledBody body = body(name);
        List<Pole> open = body.poles();
        assertThat(body.helmholtzFrequencyHz()).isCloseTo(helmholtz, HALF_MILLIHERTZ);
        assertThat(body.airSpringFrequencyHz(body.top())).isCloseTo(airSpring, HALF_MILLIHERTZ);
        assertThat(body.with(HoleState.COVERED).poles())
                .singleElement()
                .satisfies(p -> assertThat(p.frequencyHz()).isCloseTo(closed, HALF_MILLIHERTZ));
        assertThat(open).hasSize(2);
        assertThat(open.get(0).frequencyHz()).isCloseTo(lower, HALF_MILLIHERTZ);
        assertThat(open.get(1).frequencyHz()).isCloseTo(upper, HALF_MILLIHERTZ);
    }

    @ParameterizedTest
    @CsvSource({
        "A, -3.964, 0.798, 48492.81, 20974.54",
        "B, -4.261, 1.106, 44009.70, 19901.74",
        "C, -2.791, 0.560, 55404.24, 21610.13"
    })
    void flowsSumAndProduct(String name, double lowerFlow, double upperFlow, double sum, double product) {
        CoupledBody body = body(name);
        double lower = body.poles().get(0).frequencyHz();
        double upper = body.poles().get(1).frequencyHz();
        assertThat(body.volumeRatios(lower).get(1)).isCloseTo(lowerFlow, within(0.00051));
        assertThat(body.volumeRatios(upper).get(1)).isCloseTo(upperFlow, within(0.00051));
        assertThat(lower * lower + upper * upper).isCloseTo(sum, within(0.0051));
        assertThat(lower * upper).isCloseTo(product, within(0.0051));
    }
}
