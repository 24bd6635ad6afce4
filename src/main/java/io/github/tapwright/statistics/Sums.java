package io.github.tapwright.statistics;

import java.util.List;

/**
 * Sums that do not lose the small differences of large numbers.
 *
 * <p>Values are taken relative to the first of them; what the mean misses by rounding is put right in a second pass
 * (the corrected two-pass algorithm). Source: [Chan1983].
 */
final class Sums {

    private Sums() {}

    static double mean(double[] values) {
        return mean(List.of(values));
    }

    /** Of all values together; the first part is not empty. */
    static double mean(List<double[]> parts) {
        double pivot = parts.get(0)[0];
        double sum = 0;
        double lost = 0;
        int count = 0;
        for (double[] part : parts) {
            for (double value : part) {
                double term = value - pivot - lost;
                double next = sum + term;
                lost = (next - sum) - term;
                sum = next;
            }
            count += part.length;
        }
        return pivot + sum / count;
    }

    /** Σ(x − mean)². */
    static double squaresAboutMean(double[] values) {
        double mean = mean(values);
        double squares = 0;
        double remainder = 0;
        for (double value : values) {
            double deviation = value - mean;
            squares += deviation * deviation;
            remainder += deviation;
        }
        return squares - remainder * remainder / values.length;
    }
}
