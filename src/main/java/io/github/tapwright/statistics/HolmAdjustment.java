package io.github.tapwright.statistics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
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

    /**
     * Adjusts answers among which some ask no question.
     *
     * @param answers in any order
     * @param probability of an answer; empty where it asks nothing
     * @param adjusted the answer with a larger probability
     * @param <T> what an answer is
     * @return the answers in the same order, those that ask nothing as they were
     */
    public static <T> List<T> of(
            List<T> answers, Function<T, OptionalDouble> probability, BiFunction<T, Double, T> adjusted) {
        double[] larger = of(answers.stream()
                .map(probability)
                .flatMapToDouble(OptionalDouble::stream)
                .toArray());
        List<T> all = new ArrayList<>();
        int next = 0;
        for (T answer : answers) {
            all.add(probability.apply(answer).isPresent() ? adjusted.apply(answer, larger[next++]) : answer);
        }
        return all;
    }
}
