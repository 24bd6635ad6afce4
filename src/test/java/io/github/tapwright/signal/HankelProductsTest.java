package io.github.tapwright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The products stepped down the diagonals are those summed one by one. */
class HankelProductsTest {

    private static final int FROM = 7;
    private static final int TO = 61;
    private static final int ROWS = 9;

    private final double[] signal = new Random(20261129).doubles(70, -1, 1).toArray();

    private double summed(int from, int to, int i, int j) {
        double sum = 0;
        for (int n = from; n + ROWS <= to; n++) {
            sum += signal[n + i] * signal[n + j];
        }
        return sum;
    }

    @Test
    void areThoseSummedOneByOne() {
        double[][] products = new double[ROWS][ROWS];
        HankelProducts.add(signal, FROM, TO, 1, products);

        for (int i = 0; i < ROWS; i++) {
            for (int j = 0; j < ROWS; j++) {
                assertThat(products[i][j]).as("%d, %d", i, j).isEqualTo(summed(FROM, TO, i, j), within(1e-13));
            }
        }
    }

    @Test
    void severalStretchesAddUpEachByItsDivisor() {
        double[][] products = new double[ROWS][ROWS];
        HankelProducts.add(signal, FROM, TO, 2, products);
        HankelProducts.add(signal, 0, 20, 0.5, products);

        for (int i = 0; i < ROWS; i++) {
            for (int j = 0; j < ROWS; j++) {
                double expected = 0.5 * summed(FROM, TO, i, j) + 2 * summed(0, 20, i, j);
                assertThat(products[i][j]).as("%d, %d", i, j).isEqualTo(expected, within(1e-13));
            }
        }
    }

    /** As many samples as rows make one column; the signal's very end is no trouble. */
    @Test
    void oneColumnIsItsOuterProduct() {
        double[][] products = new double[ROWS][ROWS];
        HankelProducts.add(signal, signal.length - ROWS, signal.length, 1, products);

        for (int i = 0; i < ROWS; i++) {
            double here = signal[signal.length - ROWS + i];
            assertThat(products[i][i]).isEqualTo(here * here, within(1e-14));
        }
    }

    /** What is foretold of silence after a blow must be nothing, not what rounding leaves of the blow. */
    @Test
    void silenceAfterABlowSharesNothing() {
        double[] blow = new double[60];
        for (int n = 0; n < ROWS - 1; n++) {
            blow[n] = 1e3 * Math.sqrt(2 + n);
        }
        double[][] products = new double[ROWS][ROWS];
        HankelProducts.add(blow, 0, blow.length, 1, products);

        assertThat(products[ROWS - 1]).containsOnly(0);
        assertThat(products[0][0]).isGreaterThan(1e6);
    }
}
