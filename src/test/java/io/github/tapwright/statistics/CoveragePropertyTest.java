package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.hipparchus.random.RandomDataGenerator;
import org.junit.jupiter.api.Test;

/** How often intervals hold the truth and tests raise a false alarm, in studies made with seeds, as small as those of a workshop. */
class CoveragePropertyTest {

    private final RandomDataGenerator random = new RandomDataGenerator(20_260_101);

    private double[] normal(int count, double mean, double deviation) {
        return IntStream.range(0, count)
                .mapToDouble(i -> random.nextNormal(mean, deviation))
                .toArray();
    }

    private static double share(String what, int studies, Supplier<Boolean> holds) {
        int held = 0;
        for (int i = 0; i < studies; i++) {
            held += holds.get() ? 1 : 0;
        }
        double share = (double) held / studies;
        System.out.printf("%s: %.1f %% of %d%n", what, 100 * share, studies);
        return share;
    }

    @Test
    void welchsInterval() {
        assertThat(share("Welch, 5 and 5, scatter 1 and 1", 1000, () -> welch(1)))
                .isBetween(0.93, 0.97);
        assertThat(share("Welch, 5 and 5, scatter 1 and 3", 1000, () -> welch(3)))
                .isBetween(0.93, 0.97);
    }

    private boolean welch(double deviation) {
        Estimate difference = WelchDifference.of(normal(5, 200, 1), normal(5, 203, deviation));
        return Math.abs(difference.value() - 3) <= difference.halfWidth95();
    }

    @Test
    void falseAlarmsOfThePermutationTest() {
        double alarms = share(
                "false alarms of the permutation test, 5 against 5",
                1000,
                () -> PermutationTest.USUAL
                                .ofMeans(normal(5, 0, 1), normal(5, 0, 1))
                                .probability()
                        <= 0.05);

        assertThat(alarms).isBetween(0.035, 0.065);
    }

    @Test
    void falseAlarmsOfTheTrend() {
        // the exact test can only be as large as the next whole number of orders below 5 %: 4.3 % of ten values, by
        // counting
        double alarms = share(
                "false alarms of the trend, 10 values",
                2000,
                () -> MannKendall.of(normal(10, 0, 1)).probability() <= 0.05);

        assertThat(alarms).isBetween(0.028, 0.055);
    }

    @Test
    void theilAndSensInterval() {
        double[] x = IntStream.range(0, 10).asDoubleStream().toArray();
        double held = share("Theil-Sen, 10 values", 1000, () -> {
            double[] noise = normal(10, 0, 1);
            double[] y =
                    IntStream.range(0, 10).mapToDouble(i -> 0.3 * i + noise[i]).toArray();
            return TheilSen.of(x, y).interval().orElseThrow().contains(0.3);
        });

        assertThat(held).isBetween(0.935, 0.985);
    }

    @Test
    void effectsOfOneStandardDeviation() {
        double held = share(
                "effect size, 5 and 5",
                500,
                () -> EffectSize.of(Summary.of(normal(5, 0, 1)), Summary.of(normal(5, 1, 1)))
                        .orElseThrow()
                        .interval95()
                        .contains(1));

        assertThat(held).isBetween(0.925, 0.975);
    }
}
