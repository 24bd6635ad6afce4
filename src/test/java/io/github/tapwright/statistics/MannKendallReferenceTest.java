package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Trends against counted orders (validation/small-samples) and the tail tables of [Kendall1975]. */
class MannKendallReferenceTest {

    @ParameterizedTest
    @CsvSource({
        "4, 6, 1",
        "4, 4, 4",
        "5, 10, 1",
        "5, 8, 5",
        "5, 6, 14",
        "6, 15, 1",
        "6, 13, 6",
        "6, 11, 20",
        "7, 21, 1",
        "7, 19, 7",
        "7, 17, 27",
        "7, 15, 76",
        "8, 28, 1",
        "8, 20, 285",
        "8, 18, 628"
    })
    void theTailsAreWholeNumbersOfOrders(int count, int score, int orders) {
        // orders with a score as high, of n!; the table prints them as probabilities of three digits
        double factorial = IntStream.rangeClosed(1, count).mapToDouble(i -> i).reduce(1, (a, b) -> a * b);

        assertThat(KendallDistribution.ofDifferent(count).upperTail(score)).isEqualTo(orders / factorial);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1 2 3 4 5", "1 2 2 3 4 4", "2 1 3 3 5 4 7", "5 5 5 1 2", "1 1 2 2 3 3 3 4"})
    void equalValuesAreCountedAsEqual(String values) {
        double[] numbers = Arrays.stream(values.split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();

        MannKendall trend = MannKendall.of(numbers);

        assertThat(trend.method()).isEqualTo(TrendMethod.EXACT);
        assertThat(trend.probability()).isCloseTo(SmallSamples.derived("trend_two_sided", values), within(1e-10));
        assertThat(trend.variance()).isCloseTo(SmallSamples.derived("trend_variance", values), within(1e-7));
    }

    @Test
    void aHundredRisingValues() {
        MannKendall trend =
                MannKendall.of(IntStream.rangeClosed(1, 100).asDoubleStream().toArray());

        // S, variance and z as the tests of [MannKendall.jl] have them
        assertThat(trend.score()).isEqualTo(4950);
        assertThat(trend.variance()).isEqualTo(112_750);
        assertThat(trend.z()).isCloseTo(14.73869998, within(1e-8));
        assertThat(trend.method()).isEqualTo(TrendMethod.NORMAL);
        assertThat(trend.probability()).isLessThan(1e-40);
    }

    @Test
    void sensOwnData() {
        MannKendall trend =
                MannKendall.of(new double[] {1, 2, 3, 4, 10, 12, 18}, new double[] {9, 15, 19, 20, 45, 55, 78});

        assertThat(trend.score()).isEqualTo(21);
        assertThat(trend.variance()).isCloseTo(44.333, within(5e-4));
        assertThat(trend.probability()).isCloseTo(2 / 5040.0, within(1e-15));
    }

    @Test
    void countedAndNormalProbabilitiesLieNear() {
        MannKendall counted = MannKendall.of(1, 5, 2, 9, 3, 8, 4, 7, 6, 10, 11, 2.5);

        assertThat(counted.method()).isEqualTo(TrendMethod.EXACT);
        assertThat(counted.probability()).isCloseTo(2 * (1 - phi(counted.z())), within(0.01));
    }

    @Test
    void twentyValuesAreCountedAndTwentyOneAreNot() {
        double[] rising = IntStream.rangeClosed(1, 21).asDoubleStream().toArray();

        assertThat(MannKendall.of(Arrays.copyOf(rising, 20)).method()).isEqualTo(TrendMethod.EXACT);
        // one order of 20!, either way
        assertThat(MannKendall.of(Arrays.copyOf(rising, 20)).probability()).isEqualTo(2 / 2_432_902_008_176_640_000.0);
        assertThat(MannKendall.of(rising).method()).isEqualTo(TrendMethod.NORMAL);
    }

    private static double phi(double z) {
        return 1 - StudentProbability.twoSided(Estimate.of(z, 1)) / 2;
    }

    @Test
    void valuesOfOneTimeAreNotCompared() {
        MannKendall trend = MannKendall.of(new double[] {1, 1, 2, 2}, new double[] {1, 2, 3, 4});

        // by hand: four pairs at different times, all rising; variance with the ties of time, (156 − 2·18)/18 = 6.667
        assertThat(trend.score()).isEqualTo(4);
        assertThat(trend.variance()).isCloseTo(120 / 18.0, within(1e-12));
        assertThat(trend.method()).isEqualTo(TrendMethod.NORMAL);
    }

    @Test
    void whatNeverChangesHasNoTrend() {
        MannKendall still = MannKendall.of(5, 5, 5, 5);
        MannKendall together = MannKendall.of(new double[] {1, 1}, new double[] {1, 2});

        assertThat(still.probability()).isOne();
        assertThat(still.z()).isZero();
        assertThat(together.probability()).isOne();
    }

    @Test
    void fallingIsAsSureAsRising() {
        assertThat(MannKendall.of(5, 4, 3, 2, 1).probability())
                .isEqualTo(MannKendall.of(1, 2, 3, 4, 5).probability());
        assertThat(MannKendall.of(5, 4, 3, 2, 1).z()).isNegative();
    }

    @Test
    void refusesTooLittle() {
        assertThatThrownBy(() -> MannKendall.of(1)).hasMessageContaining("at least two");
        assertThatThrownBy(() -> MannKendall.of(new double[] {1}, new double[] {1, 2}))
                .hasMessageContaining("1 times");
    }
}
