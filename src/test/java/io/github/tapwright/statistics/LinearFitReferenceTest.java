package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.tapwright.validation.DataFile;
import io.github.tapwright.validation.Digits;
import org.junit.jupiter.api.Test;

/** Certified regressions, [NIST-StRD]. */
class LinearFitReferenceTest {

    @Test
    void aStraightLine() {
        DataFile data = Nist.data("norris");

        assertAgrees(LinearFit.line(data.column("x"), data.column("y")), "norris", 12);
    }

    @Test
    void aParabola() {
        DataFile data = Nist.data("pontius");

        assertAgrees(LinearFit.polynomial(data.column("x"), data.column("y"), 2), "pontius", 11);
    }

    @Test
    void sixQuantitiesThatNearlyFollowFromEachOther() {
        DataFile data = Nist.data("longley");
        double[][] columns = new double[6][];
        for (int i = 0; i < 6; i++) {
            columns[i] = data.column("x" + (i + 1));
        }

        assertAgrees(LinearFit.of(data.column("y"), columns), "longley", 10);
    }

    private static void assertAgrees(LinearFit fit, String dataset, double digits) {
        for (int i = 0; i < fit.coefficients().size(); i++) {
            Estimate b = fit.coefficients().get(i);
            assertThat(Digits.shared(b.value(), Nist.certified(dataset, "b" + i)))
                    .as("b" + i)
                    .isGreaterThanOrEqualTo(digits);
            assertThat(Digits.shared(b.standardUncertainty(), Nist.certified(dataset, "se" + i)))
                    .as("se" + i)
                    .isGreaterThanOrEqualTo(digits);
        }
        assertThat(Digits.shared(fit.residualStandardDeviation(), Nist.certified(dataset, "residual_sd")))
                .isGreaterThanOrEqualTo(digits);
        assertThat(Digits.shared(fit.rSquared(), Nist.certified(dataset, "r_squared")))
                .isGreaterThanOrEqualTo(digits);
    }

    @Test
    void aLevelLineExplainsAllThereIs() {
        assertThat(LinearFit.line(new double[] {1, 2, 3}, new double[] {5, 5, 5})
                        .rSquared())
                .isEqualTo(1);
    }

    @Test
    void refusesWhatCannotBeFitted() {
        double[] three = {1, 2, 3};
        assertThatThrownBy(() -> LinearFit.line(new double[] {1, 2}, new double[] {1, 2}))
                .hasMessageContaining("more than 2");
        assertThatThrownBy(() -> LinearFit.line(new double[] {1, 2}, three)).hasMessageContaining("each column");
        assertThatThrownBy(() -> LinearFit.line(new double[] {4, 4, 4}, three)).hasMessageContaining("told apart");
        assertThatThrownBy(() -> LinearFit.line(new double[] {0, 0, 0}, three)).hasMessageContaining("told apart");
    }
}
