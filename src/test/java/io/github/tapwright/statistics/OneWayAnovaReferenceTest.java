package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.validation.Digits;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Certified analyses of variance, [NIST-StRD]. AtmWtAg and SmLs04 hold their answer in the last digits of numbers without exact
 * binary form; what is lost there no sum can bring back, hence fewer digits.
 */
class OneWayAnovaReferenceTest {

    @ParameterizedTest
    @CsvSource({"sirstv, 12", "atmwtag, 10", "smls01, 13", "smls04, 10"})
    void agreesWithTheCertifiedDigits(String dataset, double digits) {
        OneWayAnova anova = OneWayAnova.of(Nist.data(dataset).groups());

        assertShared(anova.betweenSquares(), dataset, "between_ss", digits);
        assertShared(anova.withinSquares(), dataset, "within_ss", digits);
        assertShared(anova.f().orElseThrow(), dataset, "f", digits);
        assertShared(anova.rSquared().orElseThrow(), dataset, "r_squared", digits);
        assertShared(anova.residualStandardDeviation(), dataset, "residual_sd", digits);
    }

    private static void assertShared(double computed, String dataset, String quantity, double digits) {
        assertThat(Digits.shared(computed, Nist.certified(dataset, quantity)))
                .as(quantity)
                .isGreaterThanOrEqualTo(digits);
    }

    @Test
    void theProbabilityOfTwoGroupsIsThatOfStudentsT() {
        // F with one degree of freedom is t²: the same question asked twice, here with equal scatter assumed
        OneWayAnova anova = OneWayAnova.of(List.of(new double[] {1, 2, 3, 4, 5}, new double[] {2, 3, 4, 5, 6}));

        // t = -1 with 8 degrees of freedom: 0.34659, [RosettaCode]
        assertThat(anova.f().orElseThrow()).isCloseTo(1, within(1e-12));
        assertThat(anova.probability().orElseThrow()).isCloseTo(0.34659, within(5e-6));
    }

    @Test
    void withoutScatterThereIsNoRatio() {
        OneWayAnova flat = OneWayAnova.of(List.of(new double[] {1, 1}, new double[] {2, 2}));
        OneWayAnova level = OneWayAnova.of(List.of(new double[] {1, 1}, new double[] {1, 1}));

        assertThat(flat.f()).isEmpty();
        assertThat(flat.probability()).isEmpty();
        assertThat(flat.rSquared()).hasValue(1);
        assertThat(level.rSquared()).isEmpty();
    }

    @Test
    void refusesGroupsThatTellNothing() {
        double[] two = {1, 2};
        assertThatThrownBy(() -> OneWayAnova.of(List.of(two))).hasMessageContaining("two groups");
        assertThatThrownBy(() -> OneWayAnova.of(List.of(two, new double[0]))).hasMessageContaining("none empty");
        assertThatThrownBy(() -> OneWayAnova.of(List.of(new double[] {1}, new double[] {2})))
                .hasMessageContaining("repeat");
    }
}
