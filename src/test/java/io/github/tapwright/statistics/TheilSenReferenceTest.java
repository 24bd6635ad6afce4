package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The worked example of [Sen1968], as the tests of [SciPy] quote it. */
class TheilSenReferenceTest {

    private static final double[] X = {1, 2, 3, 4, 10, 12, 18};
    private static final double[] Y = {9, 15, 19, 20, 45, 55, 78};

    @Test
    void slopeInterceptAndIntervalOfThePaper() {
        TheilSen line = TheilSen.of(X, Y, 0.965);

        assertThat(line.slope()).isEqualTo(4);
        // of the two intercepts [SciPy] offers, the joint one
        assertThat(line.intercept()).isEqualTo(6);
        // printed as 3.71 and 4.38 for 93 %: fourth slope from either end, which [HollanderWolfe1999] count as 97 %
        assertThat(line.interval().orElseThrow().lower()).isCloseTo(3.71, within(0.005));
        assertThat(line.interval().orElseThrow().upper()).isCloseTo(4.38, within(0.005));
        assertThat(line.method()).isEqualTo(TrendMethod.EXACT);
    }

    @Test
    void theIntervalIsNoWiderThanItsCoverageAsksFor() {
        // P(|S| ≤ 11) = 1 − 2·174/5040 = 0.931 with seven values: the fifth slope from either end, by hand 15/4 and
        // 46/11
        Interval interval = TheilSen.of(X, Y, 0.93).interval().orElseThrow();

        assertThat(interval.lower()).isCloseTo(30 / 8.0, within(1e-12));
        assertThat(interval.upper()).isCloseTo(46 / 11.0, within(1e-12));
    }

    @Test
    void aTinyExample() {
        // [SciPy]'s test: slope 0.5, joint intercept 0
        TheilSen line = TheilSen.of(new double[] {0, 1, 2}, new double[] {0, 1, 1});

        assertThat(line.slope()).isEqualTo(0.5);
        assertThat(line.intercept()).isZero();
        assertThat(line.interval()).isEmpty();
    }

    @Test
    void fiveValuesGiveTheWidestInterval() {
        TheilSen line = TheilSen.of(new double[] {1, 2, 3, 4, 5}, new double[] {1, 2.2, 2.9, 4.1, 5});

        // all ten slopes lie within, coverage 1 - 2/120
        assertThat(line.interval().orElseThrow().lower()).isCloseTo(0.7, within(1e-12));
        assertThat(line.interval().orElseThrow().upper()).isCloseTo(1.2, within(1e-12));
        assertThat(line.coverage()).isEqualTo(0.95);
    }

    @Test
    void manyValuesUseTheNormalDistribution() {
        double[] x = IntStream.range(0, 30).asDoubleStream().toArray();
        double[] y = IntStream.range(0, 30).mapToDouble(i -> 2 * i + (i % 3)).toArray();

        TheilSen line = TheilSen.of(x, y);

        assertThat(line.method()).isEqualTo(TrendMethod.NORMAL);
        assertThat(line.interval().orElseThrow().contains(2)).isTrue();
    }

    @Test
    void valuesAtOnePlaceGiveNoSlopeBetweenThem() {
        TheilSen line =
                TheilSen.of(new double[] {1, 1, 2, 2, 3, 3, 4, 4, 5, 5}, new double[] {1, 2, 2, 3, 3, 4, 4, 5, 5, 6});

        assertThat(line.slope()).isEqualTo(1);
        assertThat(line.method()).isEqualTo(TrendMethod.NORMAL);
        assertThat(line.interval()).isPresent();
    }

    @Test
    void refusesWhatHasNoSlope() {
        assertThatThrownBy(() -> TheilSen.of(new double[] {1, 1}, new double[] {1, 2}))
                .hasMessageContaining("two places");
        assertThatThrownBy(() -> TheilSen.of(new double[] {1}, new double[] {1, 2}))
                .hasMessageContaining("its y");
        assertThatThrownBy(() -> TheilSen.of(X, Y, 1)).hasMessageContaining("between 0 and 1");
        assertThatThrownBy(() -> TheilSen.of(X, Y, 0)).hasMessageContaining("between 0 and 1");
    }
}
