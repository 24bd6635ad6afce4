package io.github.tapwright.level.broadcast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.signal.SecondOrderSection;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The K weighting against [BS1770], annex 1. */
class KWeightingReferenceTest {

    /** Tolerance: the printed digits. The high pass is printed with the numerator 1, −2, 1. */
    @Test
    void thePrintedCoefficientsComeBack() {
        List<SecondOrderSection> sections = KWeighting.sections(48_000);
        SecondOrderSection shelf = sections.get(0);
        assertThat(shelf.b0()).isCloseTo(1.53512485958697, within(1e-13));
        assertThat(shelf.b1()).isCloseTo(-2.69169618940638, within(1e-13));
        assertThat(shelf.b2()).isCloseTo(1.19839281085285, within(1e-13));
        assertThat(shelf.a1()).isCloseTo(-1.69065929318241, within(1e-13));
        assertThat(shelf.a2()).isCloseTo(0.73248077421585, within(1e-13));
        SecondOrderSection highPass = sections.get(1);
        assertThat(highPass.b0()).isEqualTo(1);
        assertThat(highPass.b1()).isEqualTo(-2);
        assertThat(highPass.b2()).isEqualTo(1);
        assertThat(highPass.a1()).isCloseTo(-1.99004745483398, within(1e-13));
        assertThat(highPass.a2()).isCloseTo(0.99007225036621, within(1e-13));
    }

    /** Gains computed from the printed coefficients; tolerance half a unit of the last digit. */
    @ParameterizedTest
    @CsvSource({"997, 0.69101", "1000, 0.69770", "100, -1.1335", "10000, 4.0419"})
    void gainAt48Kilohertz(double frequencyHz, double decibels) {
        assertThat(gainDb(frequencyHz, 48_000)).isCloseTo(decibels, within(0.000051));
    }

    /** The same prototypes at other rates: the curves agree where neither rate bends its top. */
    @ParameterizedTest
    @ValueSource(doubles = {44_100, 88_200, 96_000, 192_000})
    void otherRatesFollowTheSameCurve(double rateHz) {
        for (double f = 20; f < 6000; f *= 1.1) {
            assertThat(gainDb(f, rateHz)).as("%.0f Hz", f).isCloseTo(gainDb(f, 48_000), within(0.05));
        }
    }

    @Test
    void aRateThatCannotHoldTheShelfIsRefused() {
        assertThatThrownBy(() -> KWeighting.sections(6000)).hasMessageContaining("8000 Hz");
    }

    private static double gainDb(double frequencyHz, double rateHz) {
        return KWeighting.sections(rateHz).stream()
                .mapToDouble(s -> 10 * Math.log10(s.powerGain(frequencyHz, rateHz)))
                .sum();
    }
}
