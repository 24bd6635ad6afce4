package io.github.tapwright.statistics;

import java.util.Arrays;
import java.util.Optional;

/**
 * A straight line that one bad value cannot pull away: the median of all slopes between two values.
 *
 * <p>Slopes (y_j − y_i)/(x_j − x_i) of all pairs with x_j ≠ x_i, sorted; the interval lies between the M-th from either end,
 * M = (N − C)/2, C from Kendall's score: counted exactly up to twenty values at different x, else z·√var S. Intercept: median of
 * y − slope·x. Sources: [Theil1950], [Sen1968], [HollanderWolfe1999] 9.3.
 *
 * @param slope in units of y per unit of x
 * @param intercept y at x = 0
 * @param coverage what the interval is to hold, such as 0.95
 * @param interval of the slope; empty where so few values allow none of that coverage
 * @param method where the interval comes from
 */
public record TheilSen(
        double slope, double intercept, double coverage, Optional<Interval> interval, TrendMethod method) {

    private static final double USUAL_COVERAGE = 0.95;

    /**
     * The line with an interval of 95 %.
     *
     * @param x at least two values, not all equal
     * @param y as many
     * @return the line
     */
    public static TheilSen of(double[] x, double[] y) {
        return of(x, y, USUAL_COVERAGE);
    }

    /**
     * The line with an interval of any coverage.
     *
     * @param x at least two values, not all equal
     * @param y as many
     * @param coverage between 0 and 1
     * @return the line
     */
    public static TheilSen of(double[] x, double[] y, double coverage) {
        if (!(coverage > 0 && coverage < 1)) {
            throw new IllegalArgumentException("a coverage lies between 0 and 1, was " + coverage);
        }
        double[] slopes = slopes(x, y);
        double slope = Median.of(slopes);
        double[] offsets = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            offsets[i] = y[i] - slope * x[i];
        }
        int[] equal = Ties.of(x);
        boolean exact = x.length <= KendallDistribution.MOST && Ties.none(equal);
        int rank = exact
                ? exactRank(x.length, slopes.length, (1 - coverage) / 2)
                : normalRank(x.length, equal, slopes.length, (1 - coverage) / 2);
        Optional<Interval> interval = rank >= 1
                ? Optional.of(new Interval(slopes[rank - 1], slopes[slopes.length - rank]))
                : Optional.empty();
        return new TheilSen(
                slope, Median.of(offsets), coverage, interval, exact ? TrendMethod.EXACT : TrendMethod.NORMAL);
    }

    /** Sorted. */
    private static double[] slopes(double[] x, double[] y) {
        if (x.length != y.length) {
            throw new IllegalArgumentException("every x needs its y, got " + x.length + " and " + y.length);
        }
        Finite.check(x, y);
        double[] slopes = new double[x.length * (x.length - 1) / 2];
        int count = 0;
        for (int i = 0; i < x.length; i++) {
            for (int j = i + 1; j < x.length; j++) {
                if (x[i] != x[j]) {
                    slopes[count++] = (y[j] - y[i]) / (x[j] - x[i]);
                }
            }
        }
        if (count == 0) {
            throw new IllegalArgumentException("a slope needs values at two places at least");
        }
        double[] found = Arrays.copyOf(slopes, count);
        Arrays.sort(found);
        return found;
    }

    /** M from the smallest score that chance reaches no more often than the tail. */
    private static int exactRank(int count, int pairs, double tail) {
        KendallDistribution distribution = KendallDistribution.ofDifferent(count);
        int score = pairs;
        if (distribution.upperTail(score) > tail) {
            return 0;
        }
        while (distribution.upperTail(score - 2) <= tail) {
            score -= 2;
        }
        return (pairs - (score - 2)) / 2;
    }

    private static int normalRank(int count, int[] equal, int pairs, double tail) {
        int[] different = new int[count];
        Arrays.fill(different, 1);
        double spread = Math.sqrt(Ties.scoreVariance(count, equal, different));
        double z = StudentQuantile.of(1 - tail, Double.POSITIVE_INFINITY);
        return (int) Math.floor((pairs - z * spread) / 2);
    }
}
