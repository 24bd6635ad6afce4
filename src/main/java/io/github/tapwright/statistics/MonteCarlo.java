package io.github.tapwright.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.random.RandomDataGenerator;

/**
 * Carries whole distributions through a formula by drawing from them, where {@link UncertaintyBudget} with its straight lines will not
 * do: strongly curved formulas, or inputs that are far from normal. Source: [GUM-S1], 7.
 *
 * @param trials how many draws, at least 1000; a million gives two good digits of an interval's ends
 * @param seed starts the generator; the same seed gives the same result
 */
public record MonteCarlo(int trials, long seed) {

    private static final int FEWEST = 1000;
    private static final double COVERAGE = 0.95;

    /** Refuses too few draws. */
    public MonteCarlo {
        if (trials < FEWEST) {
            throw new IllegalArgumentException("at least " + FEWEST + " draws are needed, got " + trials);
        }
    }

    /**
     * Draws.
     *
     * @param inputs independent of each other
     * @param result the formula: one drawn value for each input, in their order
     * @return the distribution of the result
     */
    public Propagation propagate(List<InputQuantity> inputs, ToDoubleFunction<double[]> result) {
        RandomDataGenerator random = new RandomDataGenerator(seed);
        double[] results = new double[trials];
        double[] drawn = new double[inputs.size()];
        for (int trial = 0; trial < trials; trial++) {
            for (int i = 0; i < drawn.length; i++) {
                drawn[i] = inputs.get(i).draw(random);
            }
            results[trial] = result.applyAsDouble(drawn);
            if (!Double.isFinite(results[trial])) {
                throw new IllegalArgumentException("the formula gives no number for " + Arrays.toString(drawn)
                        + ": keep the inputs where it holds");
            }
        }
        Summary summary = Summary.of(results);
        Arrays.sort(results);
        return new Propagation(
                summary.mean(), summary.standardDeviation(), symmetric(results), shortest(results), trials);
    }

    private static Interval symmetric(double[] sorted) {
        return new Interval(
                Median.quantile(sorted, (1 - COVERAGE) / 2), Median.quantile(sorted, 1 - (1 - COVERAGE) / 2));
    }

    private static Interval shortest(double[] sorted) {
        int held = (int) Math.round(COVERAGE * sorted.length);
        int from = 0;
        for (int i = 1; i + held < sorted.length; i++) {
            if (sorted[i + held] - sorted[i] < sorted[from + held] - sorted[from]) {
                from = i;
            }
        }
        return new Interval(sorted[from], sorted[from + held]);
    }
}
