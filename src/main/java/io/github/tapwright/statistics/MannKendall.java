package io.github.tapwright.statistics;

import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Does a quantity drift one way over time, whatever the shape of the drift?
 *
 * <p>S counts pairs of which the later is higher, less pairs of which it is lower. If nothing drifts every order is as likely: up to
 * twenty values taken at different times all orders are counted, with equal values treated as equal; beyond that, or with values
 * taken at the same time, z = (S ∓ 1)/√var S with the variance for ties. Sources: [Mann1945], [Kendall1975]. Values must be
 * independent; with four or fewer no drift can be shown at 5 %.
 *
 * @param score S
 * @param variance of S if nothing drifts
 * @param probability two-sided, of a score as far from zero if nothing drifts
 * @param method exact or normal
 */
public record MannKendall(int score, double variance, double probability, TrendMethod method) {

    /**
     * The test for values taken one after the other.
     *
     * @param inOrderOfTime at least two values
     * @return the test
     */
    public static MannKendall of(double... inOrderOfTime) {
        return of(IntStream.range(0, inOrderOfTime.length).asDoubleStream().toArray(), inOrderOfTime);
    }

    /**
     * The test for values with their times.
     *
     * @param times in any order and unit, equal where taken together
     * @param values as many, at least two
     * @return the test
     */
    public static MannKendall of(double[] times, double[] values) {
        if (values.length < 2 || times.length != values.length) {
            throw new IllegalArgumentException("a trend needs at least two values, each with its time, got "
                    + values.length + " values and " + times.length + " times");
        }
        Finite.check(times, values);
        int score = score(times, values);
        int[] equalTimes = Ties.of(times);
        int[] equalValues = Ties.of(values);
        double variance = Ties.scoreVariance(values.length, equalTimes, equalValues);
        boolean exact = values.length <= KendallDistribution.MOST && Ties.none(equalTimes);
        double probability = exact
                ? Math.min(1, 2 * KendallDistribution.of(equalValues).upperTail(Math.abs(score)))
                : normal(score, variance);
        return new MannKendall(score, variance, probability, exact ? TrendMethod.EXACT : TrendMethod.NORMAL);
    }

    /**
     * The score in units of its standard deviation, drawn one towards zero as scores move in steps.
     *
     * @return z; 0 where nothing varies
     */
    public double z() {
        return z(score, variance);
    }

    private static double z(int score, double variance) {
        return score == 0 || variance == 0 ? 0 : (score - Integer.signum(score)) / Math.sqrt(variance);
    }

    private static double normal(int score, double variance) {
        return Math.min(1, 2 * new NormalDistribution().cumulativeProbability(-Math.abs(z(score, variance))));
    }

    private static int score(double[] times, double[] values) {
        int score = 0;
        for (int i = 0; i < values.length; i++) {
            for (int j = i + 1; j < values.length; j++) {
                score += (int) (Math.signum(times[j] - times[i]) * Math.signum(values[j] - values[i]));
            }
        }
        return score;
    }
}
