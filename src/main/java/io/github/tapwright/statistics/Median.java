package io.github.tapwright.statistics;

import java.util.Arrays;

/**
 * Medians and other quantiles of a sample.
 */
public final class Median {

    private Median() {}

    /**
     * The median: the middle value, or the mean of the two middle values.
     *
     * @param values at least one, left unchanged
     * @return the median
     */
    public static double of(double[] values) {
        return quantile(values, 0.5);
    }

    /**
     * A quantile by linear interpolation between order statistics. Source: [HyndmanFan1996], definition 7.
     *
     * @param values at least one, left unchanged
     * @param fraction between 0 and 1
     * @return the quantile
     */
    public static double quantile(double[] values, double fraction) {
        if (values.length == 0) {
            throw new IllegalArgumentException("no values, no quantile");
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double h = (sorted.length - 1) * fraction;
        int below = (int) Math.floor(h);
        int above = Math.min(sorted.length - 1, below + 1);
        return sorted[below] + (h - below) * (sorted[above] - sorted[below]);
    }
}
