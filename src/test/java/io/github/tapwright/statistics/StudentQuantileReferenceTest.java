package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values of [GUM], table G.2, printed to two decimals; hence the tolerance. */
class StudentQuantileReferenceTest {

    @ParameterizedTest
    @CsvSource({"1, 12.71", "2, 4.30", "3, 3.18", "5, 2.57", "10, 2.23", "20, 2.09", "50, 2.01", "Infinity, 1.96"})
    void coverageOf95Percent(double degreesOfFreedom, double printed) {
        assertThat(StudentQuantile.of(0.975, degreesOfFreedom)).isCloseTo(printed, within(0.0051));
        assertThat(new Estimate(10, 2, degreesOfFreedom).halfWidth95()).isCloseTo(2 * printed, within(0.0102));
    }

    @ParameterizedTest
    @CsvSource({"NaN, 1, 1", "1, -1, 1", "1, NaN, 1", "1, 1, 0", "1, 1, NaN"})
    void refusesWhatIsNoEstimate(double value, double uncertainty, double degrees) {
        assertThatThrownBy(() -> new Estimate(value, uncertainty, degrees))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "0.5, 2.5", "1, 4", "0.25, 1.75"})
    void quantilesInterpolateBetweenOrderStatistics(double fraction, double expected) {
        assertThat(Median.quantile(new double[] {4, 1, 3, 2}, fraction)).isCloseTo(expected, within(1e-12));
    }
}
