package io.github.tapwright.signal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sums worked out several at a time are those of the formulas, to the last bit, whatever the length leaves over. */
class LinearPredictionTest {

    @ParameterizedTest
    @CsvSource({"0, 200, 33", "3, 200, 33", "5, 41, 32", "0, 7, 9", "0, 3, 4", "10, 10, 5"})
    void accumulatesTheProductsOfItsFormula(int from, int to, int lags) {
        double[] signal = new Random(1).doubles(200, -1, 1).toArray();
        double[] found = new double[lags];
        found[0] = 0.25;
        LinearPrediction.accumulate(signal, from, to, found);
        for (int k = 0; k < lags; k++) {
            double sum = 0;
            for (int n = from; n + k < to; n++) {
                sum += signal[n] * signal[n + k];
            }
            assertThat(found[k]).isEqualTo(k == 0 ? 0.25 + sum : sum);
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 33", "2, 33", "32, 33", "33, 33", "34, 33", "103, 33", "20, 2", "20, 1"})
    void leavesTheErrorOfItsFormula(int length, int coefficients) {
        Random chance = new Random(2);
        double[] signal = chance.doubles(length, -1, 1).toArray();
        double[] a = chance.doubles(coefficients, -1, 1).toArray();
        double[] error = new LinearPrediction(a).error(signal);
        for (int n = 0; n < length; n++) {
            double wanted = 0;
            for (int k = Math.min(n, coefficients - 1); k >= 0; k--) {
                wanted += a[k] * signal[n - k];
            }
            assertThat(error[n]).isEqualTo(wanted);
        }
    }
}
