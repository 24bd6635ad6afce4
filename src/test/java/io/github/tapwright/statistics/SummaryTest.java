package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SummaryTest {

    @Test
    void theMeanIsAsSureAsScatterAndCountMakeIt() {
        Estimate mean = Summary.of(1, 2, 3, 4, 5).ofMean();

        assertThat(mean.value()).isEqualTo(3);
        assertThat(mean.standardUncertainty()).isCloseTo(Math.sqrt(2.5 / 5), within(1e-15));
        assertThat(mean.degreesOfFreedom()).isEqualTo(4);
    }

    @Test
    void equalValuesHaveNoAutocorrelation() {
        assertThat(Summary.lag1Autocorrelation(7, 7, 7)).isEmpty();
    }

    @Test
    void oneValueHasNoScatter() {
        assertThatThrownBy(() -> Summary.of(3)).hasMessageContaining("at least two values");
    }

    @ParameterizedTest
    @CsvSource({"1, 0, 1", "3, NaN, 1", "3, 0, -1", "3, 0, Infinity"})
    void refusesWhatIsNoSummary(int count, double mean, double deviation) {
        assertThatThrownBy(() -> new Summary(count, mean, deviation)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"2, 1", "NaN, 1", "0, NaN"})
    void anIntervalRunsUpwards(double lower, double upper) {
        assertThatThrownBy(() -> new Interval(lower, upper)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aGapInTheValuesIsNamed() {
        double[] gap = {1, Double.NaN, 3};
        double[] whole = {1, 2, 3};

        assertThatThrownBy(() -> Summary.of(gap)).hasMessageContaining("value 2 of 3");
        assertThatThrownBy(() -> OneWayAnova.of(List.of(whole, gap))).hasMessageContaining("value 5 of 6");
        assertThatThrownBy(() -> PermutationTest.USUAL.ofMeans(whole, gap)).hasMessageContaining("value 2");
        assertThatThrownBy(() -> PermutationTest.USUAL.ofPairs(gap)).hasMessageContaining("value 2");
        assertThatThrownBy(() -> MannKendall.of(gap)).hasMessageContaining("value 2");
        assertThatThrownBy(() -> TheilSen.of(whole, gap)).hasMessageContaining("value 2");
        assertThatThrownBy(() -> LinearFit.line(gap, whole)).hasMessageContaining("value 2");
        assertThatThrownBy(() -> LinearFit.line(whole, gap)).hasMessageContaining("value 2");
    }

    @Test
    void anIntervalHoldsItsEnds() {
        Interval interval = new Interval(-1, 3);

        assertThat(interval.contains(-1) && interval.contains(3)).isTrue();
        assertThat(interval.contains(-1.01) || interval.contains(3.01)).isFalse();
        assertThat(interval.width()).isEqualTo(4);
    }
}
