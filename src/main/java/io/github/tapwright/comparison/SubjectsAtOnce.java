package io.github.tapwright.comparison;

import io.github.tapwright.statistics.HolmAdjustment;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Answers about many sittings, their probabilities made larger for all asked at once.
 *
 * <p>A decay time is its resonance's Q seen twice and no question of its own: it would only make every other answer harder to find. What
 * it has to overcome is its own probability and what its Q's has become. Source of the adjustment: [Holm1979].
 *
 * @param <T> what an answer is
 */
public final class SubjectsAtOnce<T> {

    private final List<T> answers;
    private final Function<T, Subject> subject;
    private final Function<T, OptionalDouble> probability;

    /**
     * Asks them at once.
     *
     * @param answers the decay time of a resonance right after its Q
     * @param subject of an answer
     * @param probability of an answer asked alone, 0 to 1; empty where nothing is asked
     */
    public SubjectsAtOnce(List<T> answers, Function<T, Subject> subject, Function<T, OptionalDouble> probability) {
        this.answers = List.copyOf(answers);
        this.subject = subject;
        this.probability = probability;
    }

    /**
     * How many questions they are.
     *
     * @return without the decay times whose Q is asked
     */
    public int count() {
        return (int) IntStream.range(0, answers.size()).filter(this::isQuestion).count();
    }

    private boolean isQuestion(int i) {
        return alone(i).isPresent() && !isQAgain(i);
    }

    private boolean isQAgain(int i) {
        return i > 0
                && alone(i - 1).isPresent()
                && subject.apply(answers.get(i)).isDecayTo(subject.apply(answers.get(i - 1)));
    }

    private OptionalDouble alone(int i) {
        return probability.apply(answers.get(i));
    }

    /**
     * Adjusts.
     *
     * @param adjusted an answer with a larger probability
     * @return the answers in the same order, those that ask nothing as they were
     */
    public List<T> adjusted(BiFunction<T, Double, T> adjusted) {
        List<OptionalDouble> larger = HolmAdjustment.of(
                IntStream.range(0, answers.size())
                        .mapToObj(i -> isQuestion(i) ? alone(i) : OptionalDouble.empty())
                        .toList(),
                p -> p,
                (p, more) -> OptionalDouble.of(more));
        List<T> all = new ArrayList<>();
        for (int i = 0; i < answers.size(); i++) {
            OptionalDouble p = isQAgain(i) ? noSurerThan(larger.get(i - 1), alone(i)) : larger.get(i);
            all.add(p.isPresent() ? adjusted.apply(answers.get(i), p.getAsDouble()) : answers.get(i));
        }
        return all;
    }

    private static OptionalDouble noSurerThan(OptionalDouble q, OptionalDouble own) {
        return own.isPresent() ? OptionalDouble.of(Math.max(own.getAsDouble(), q.orElseThrow())) : own;
    }
}
