package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.statistics.InputQuantity.Measured;
import io.github.tapwright.statistics.InputQuantity.Rectangular;
import java.util.stream.DoubleStream;
import org.hipparchus.random.RandomDataGenerator;
import org.junit.jupiter.api.Test;

/** Draws have the scatter and the tails of their distribution; 200 000 of them leave some 0.03 of play. */
class InputQuantityTest {

    private static double[] drawn(InputQuantity input) {
        RandomDataGenerator random = new RandomDataGenerator(20_260_101);
        return DoubleStream.generate(() -> input.draw(random))
                .limit(200_000)
                .sorted()
                .toArray();
    }

    private static double scatter(double[] drawn) {
        return Summary.of(drawn).standardDeviation();
    }

    @Test
    void aSureMeasurementIsNormal() {
        double[] drawn = drawn(new Measured(Estimate.of(10, 2)));
        assertThat(scatter(drawn)).isCloseTo(2, within(0.02));
        assertThat(Median.quantile(drawn, 0.975)).isCloseTo(10 + 2 * 1.96, within(0.06));
    }

    @Test
    void fewDegreesOfFreedomMakeLongTails() {
        // Student's t with ν = 4 has the standard deviation √2 and its 97.5 % quantile at 2.776, [GUM] table G.2
        double[] drawn = drawn(new Measured(new Estimate(10, 1, 4)));
        assertThat(scatter(drawn)).isCloseTo(Math.sqrt(2), within(0.02));
        assertThat(Median.quantile(drawn, 0.975)).isCloseTo(12.776, within(0.04));
    }

    @Test
    void aRectangleHasItsKnownScatter() {
        // [GUM], 4.3.7: a/√3
        double[] drawn = drawn(new Rectangular(new Interval(-1, 1)));
        assertThat(scatter(drawn)).isCloseTo(1 / Math.sqrt(3), within(0.003));
        assertThat(drawn[0]).isGreaterThanOrEqualTo(-1);
    }

    @Test
    void tooFewDrawsAreRefused() {
        assertThatThrownBy(() -> new MonteCarlo(999, 1)).hasMessageContaining("1000");
    }
}
