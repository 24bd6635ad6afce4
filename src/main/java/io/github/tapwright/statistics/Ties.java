package io.github.tapwright.statistics;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/** How many values are equal to each other. */
final class Ties {

    private Ties() {}

    /** Sizes of the groups of equal values, ones included. */
    static int[] of(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int[] sizes = new int[sorted.length];
        int groups = 0;
        for (int i = 0; i < sorted.length; i++) {
            if (i == 0 || sorted[i] != sorted[i - 1]) {
                groups++;
            }
            sizes[groups - 1]++;
        }
        return Arrays.copyOf(sizes, groups);
    }

    static boolean none(int[] sizes) {
        return Arrays.stream(sizes).allMatch(t -> t == 1);
    }

    /**
     * The variance of Kendall's score with ties on both sides. Source: [Kendall1975], ch. 4.
     *
     * @param count n, at least 2
     * @param first groups of equal values on one side
     * @param second and on the other
     */
    static double scoreVariance(int count, int[] first, int[] second) {
        double n = count;
        IntToDoubleFunction whole = t -> (double) t * (t - 1) * (2 * t + 5);
        IntToDoubleFunction triples = t -> (double) t * (t - 1) * (t - 2);
        IntToDoubleFunction pairs = t -> (double) t * (t - 1);
        double variance = (n * (n - 1) * (2 * n + 5) - sum(first, whole) - sum(second, whole)) / 18;
        variance += sum(first, pairs) * sum(second, pairs) / (2 * n * (n - 1));
        if (count > 2) {
            variance += sum(first, triples) * sum(second, triples) / (9 * n * (n - 1) * (n - 2));
        }
        return variance;
    }

    private static double sum(int[] sizes, IntToDoubleFunction of) {
        return Arrays.stream(sizes).mapToDouble(of).sum();
    }
}
