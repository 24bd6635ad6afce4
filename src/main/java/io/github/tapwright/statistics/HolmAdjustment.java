package io.github.tapwright.statistics;

import java.util.ArrayList;
import java.util.Arrays;
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
 * those still below 5 % then hold together with 95 %. Questions that matter more may be given a greater part of the 5 % beforehand.
 * Source: [Holm1979], alike and with weights.
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
        double[] alike = new double[probabilities.length];
        Arrays.fill(alike, 1);
        return weighted(probabilities, alike);
    }

    /**
     * Adjusts questions that were given unlike parts of the 5 % before anything was measured.
     *
     * <p>In order of p_i/w_i each becomes (Σw of those not yet adjusted)·p_i/w_i, none smaller than the one before, none above 1.
     *
     * @param probabilities any number, each between 0 and 1, left unchanged
     * @param weights one for each, greater than 0; only their ratios count; must not hang on the probabilities
     * @return the adjusted ones, in the same order
     */
    public static double[] weighted(double[] probabilities, double[] weights) {
        double[] shares = IntStream.range(0, probabilities.length)
                .mapToDouble(i -> checked(probabilities[i]) / weights[i])
                .toArray();
        int[] order = IntStream.range(0, shares.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> shares[i]))
                .mapToInt(i -> i)
                .toArray();
        double left = Arrays.stream(weights).sum();
        double[] adjusted = new double[shares.length];
        double soFar = 0;
        for (int i : order) {
            soFar = Math.max(soFar, Math.min(1, left * shares[i]));
            adjusted[i] = soFar;
            left -= weights[i];
        }
        return adjusted;
    }

    private static double checked(double probability) {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException("a probability lies between 0 and 1, was " + probability);
        }
        return probability;
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
