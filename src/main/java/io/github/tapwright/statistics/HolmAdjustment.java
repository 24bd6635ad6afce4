package io.github.tapwright.statistics;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Probabilities made larger for having asked many questions at once.
 *
 * <p>Twenty comparisons at 5 % find a difference somewhere two times in three where there is none. The smallest of m
 * probabilities is multiplied by m, the next by m − 1 and so on, none made smaller than the one before, none above 1;
 * those still below 5 % then hold together with 95 %. Source: [Holm1979].
 */
public final class HolmAdjustment {

    private HolmAdjustment() {}

    /**
     * Adjusts.
     *
     * @param probabilities any number, each between 0 and 1, left unchanged
     * @return the adjusted ones, in the same order
     */
    public static double[] of(double... probabilities) {
        int[] order = IntStream.range(0, probabilities.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> probabilities[i]))
                .mapToInt(i -> i)
                .toArray();
        double[] adjusted = new double[probabilities.length];
        double soFar = 0;
        for (int rank = 0; rank < order.length; rank++) {
            double p = probabilities[order[rank]];
            if (!(p >= 0 && p <= 1)) {
                throw new IllegalArgumentException("a probability lies between 0 and 1, was " + p);
            }
            soFar = Math.max(soFar, Math.min(1, (order.length - rank) * p));
            adjusted[order[rank]] = soFar;
        }
        return adjusted;
    }
}
