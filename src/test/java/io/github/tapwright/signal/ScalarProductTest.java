package io.github.tapwright.signal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Two products in one walk are the two products. */
class ScalarProductTest {

    private final Random chance = new Random(20261129);

    @Test
    void addsUpWhatTheRowsShare() {
        assertThat(ScalarProduct.of(new double[] {1, 2, 3, 4, 5}, new double[] {5, 4, 3, 2, 1, 99}))
                .isEqualTo(35);
        assertThat(ScalarProduct.of(new double[0], new double[0])).isZero();
    }

    @Test
    void manyAtOnceAreTheSameNumbersToTheLastBit() {
        for (int length = 0; length < 12; length++) {
            double[] x = rows(length);
            for (int count = 0; count < 6; count++) {
                double[][] ys = new double[count][];
                for (int k = 0; k < count; k++) {
                    ys[k] = rows(length);
                }
                double[] products = new double[count + 1];
                ScalarProduct.ofEach(x, ys, count, products);
                double[] alone = IntStream.range(0, count)
                        .mapToDouble(k -> ScalarProduct.of(x, ys[k]))
                        .toArray();
                assertThat(Arrays.copyOf(products, count)).containsExactly(alone);
                assertThat(products[count]).isZero();
            }
        }
    }

    private double[] rows(int length) {
        return chance.doubles(length, -1, 1).toArray();
    }
}
