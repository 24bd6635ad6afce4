package io.github.tapwright.statistics;

import java.util.List;

/**
 * How far a result scatters when nothing is touched, and how far when everything is set up anew.
 *
 * <p>A study measures one instrument in p set-ups (taken down and put up again each time), several repeats in each. With the
 * mean squares of {@link OneWayAnova}: s_r² = MS_within; s_L² = (MS_between − MS_within)/n̄, not below zero; s_R² = s_r² + s_L²;
 * n̄ = (N − Σn²/N)/(p − 1). A set-up here is what the standard calls a laboratory. Source: [ISO5725-2].
 * Intervals: χ² for s_r, the modified large-sample method of [BurdickGraybill1992] for the others, made for equal numbers of
 * repeats and close to right for slightly unequal ones.
 *
 * @param setUps p
 * @param results N, all repeats together
 * @param repeatability s_r, one result against the next in the same set-up
 * @param betweenSetUps s_L, what setting up anew adds; zero where the repeats explain all of it
 * @param reproducibility s_R, one result against one in another set-up
 */
public record Repeatability(
        int setUps, int results, Scatter repeatability, Scatter betweenSetUps, Scatter reproducibility) {

    private static final double LIMIT = 2.8;

    /**
     * Evaluates a study.
     *
     * @param setUps the results of each set-up, at least two set-ups and one of them with a repeat; left unchanged
     * @return the three scatters
     */
    public static Repeatability of(List<double[]> setUps) {
        OneWayAnova anova = OneWayAnova.of(setUps);
        double between = anova.betweenMeanSquare();
        double within = anova.withinMeanSquare();
        double repeats = repeats(setUps, anova.values());
        MeanSquareIntervals intervals =
                new MeanSquareIntervals(between, anova.betweenFreedom(), within, anova.withinFreedom());
        Scatter repeatability = scatter(within, anova.withinFreedom(), intervals.ofSecond());
        double added = Math.max(0, (between - within) / repeats);
        Scatter betweenSetUps = scatter(
                added, freedom(anova, between / repeats, -within / repeats), intervals.ofDifference(1 / repeats));
        Scatter reproducibility = scatter(
                within + added,
                freedom(anova, between / repeats, (1 - 1 / repeats) * within),
                intervals.ofSum(1 / repeats, 1 - 1 / repeats));
        return new Repeatability(setUps.size(), anova.values(), repeatability, betweenSetUps, reproducibility);
    }

    private static double repeats(List<double[]> setUps, int results) {
        double squares =
                setUps.stream().mapToDouble(g -> (double) g.length * g.length).sum();
        return (results - squares / results) / (setUps.size() - 1);
    }

    /** Satterthwaite's rule for the sum of two parts; p − 1 where they cancel or there is nothing. */
    private static double freedom(OneWayAnova anova, double between, double within) {
        double sum = between + within;
        return sum > 0
                ? sum * sum / (between * between / anova.betweenFreedom() + within * within / anova.withinFreedom())
                : anova.betweenFreedom();
    }

    private static Scatter scatter(double variance, double freedom, Interval interval) {
        double upper = Math.max(variance, interval.upper());
        return new Scatter(
                Math.sqrt(variance),
                freedom,
                new Interval(Math.sqrt(Math.min(variance, interval.lower())), Math.sqrt(upper)));
    }

    /**
     * What two repeats in one set-up differ by at most, 19 times of 20.
     *
     * @return 2.8·s_r
     */
    public double repeatabilityLimit() {
        return LIMIT * repeatability.standardDeviation();
    }

    /**
     * What single results of two set-ups differ by at most, 19 times of 20.
     *
     * @return 2.8·s_R
     */
    public double reproducibilityLimit() {
        return LIMIT * reproducibility.standardDeviation();
    }

    /**
     * What the mean of several repeats in one set-up is worth: √(s_L² + s_r²/n). More taps do not take the first term away, only
     * setting up anew does.
     *
     * @param repeats n, at least 1
     * @return its standard uncertainty, in the results' unit
     */
    public double uncertaintyOfMean(int repeats) {
        if (repeats < 1) {
            throw new IllegalArgumentException("a mean needs at least one repeat, got " + repeats);
        }
        return Math.hypot(betweenSetUps.standardDeviation(), repeatability.standardDeviation() / Math.sqrt(repeats));
    }
}
