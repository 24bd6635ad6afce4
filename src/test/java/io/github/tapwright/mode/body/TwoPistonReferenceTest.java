package io.github.tapwright.mode.body;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.mode.HoleState;
import io.github.tapwright.validation.PublishedRow;
import io.github.tapwright.validation.PublishedTable;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Top and air plug without losses, rigid back: bodies A "classical", B "steel", C "light top".
 *
 * <p>Source: derived by matrices in another program, exact for the stated model (ρ = 1.2 kg/m³, c = 343 m/s); the
 * sum and the product of the squared frequencies are identities of [ChristensenVistisen1980]. Tolerance: the eight
 * digits on which the two agree.
 */
class TwoPistonReferenceTest {

    private static final Percentage EIGHT_DIGITS = Percentage.withPercentage(2e-6);

    static Stream<PublishedRow> bodies() {
        return PublishedTable.rows("body/two-piston.csv");
    }

    private static CoupledBody body(PublishedRow row) {
        return new CoupledBody(
                Air.ROUND,
                row.number("volume_m3"),
                new Soundhole(row.number("hole_radius_m"), row.number("top_thickness_m"), Bodies.LOSSLESS),
                Plate.lossless(row.number("top_mass_kg"), row.number("top_area_m2"), row.number("top_frequency_hz")),
                Optional.empty(),
                HoleState.OPEN);
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void parts(PublishedRow row) {
        CoupledBody body = body(row);
        assertThat(body.hole().effectiveLengthMetres()).isCloseTo(row.number("effective_length_m"), EIGHT_DIGITS);
        assertThat(body.hole().areaSquareMetres()).isCloseTo(row.number("hole_area_m2"), EIGHT_DIGITS);
        assertThat(body.air().stiffnessPascalsPerCubicMetre(body.volumeCubicMetres()))
                .isCloseTo(row.number("air_stiffness_pa_per_m3"), EIGHT_DIGITS);
        assertThat(body.hole().airMassKilograms(body.air())).isCloseTo(row.number("air_mass_kg"), EIGHT_DIGITS);
        assertThat(body.top().stiffnessNewtonsPerMetre()).isCloseTo(row.number("top_stiffness_n_per_m"), EIGHT_DIGITS);
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void frequencies(PublishedRow row) {
        CoupledBody body = body(row);
        List<Pole> open = body.poles();
        assertThat(body.helmholtzFrequencyHz()).isCloseTo(row.number("helmholtz_hz"), EIGHT_DIGITS);
        assertThat(body.airSpringFrequencyHz(body.top())).isCloseTo(row.number("air_spring_hz"), EIGHT_DIGITS);
        assertThat(body.with(HoleState.COVERED).poles())
                .singleElement()
                .satisfies(p -> assertThat(p.frequencyHz()).isCloseTo(row.number("closed_hz"), EIGHT_DIGITS));
        assertThat(open).hasSize(2);
        assertThat(open.get(0).frequencyHz()).isCloseTo(row.number("lower_hz"), EIGHT_DIGITS);
        assertThat(open.get(1).frequencyHz()).isCloseTo(row.number("upper_hz"), EIGHT_DIGITS);
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void flowsSumAndProduct(PublishedRow row) {
        CoupledBody body = body(row);
        double lower = body.poles().get(0).frequencyHz();
        double upper = body.poles().get(1).frequencyHz();
        assertThat(body.volumeRatios(lower).get(1)).isCloseTo(row.number("lower_flow"), EIGHT_DIGITS);
        assertThat(body.volumeRatios(upper).get(1)).isCloseTo(row.number("upper_flow"), EIGHT_DIGITS);
        double helmholtz = row.number("helmholtz_hz");
        double closed = row.number("closed_hz");
        assertThat(lower * lower + upper * upper).isCloseTo(helmholtz * helmholtz + closed * closed, EIGHT_DIGITS);
        assertThat(lower * upper).isCloseTo(helmholtz * row.number("top_frequency_hz"), EIGHT_DIGITS);
    }
}
