package io.github.tapwright.comparison.group;

import io.github.tapwright.comparison.HearingThreshold;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.statistics.EffectSize;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Interval;
import io.github.tapwright.statistics.PermutationResult;
import io.github.tapwright.statistics.PowerAim;
import io.github.tapwright.statistics.StudentProbability;
import io.github.tapwright.statistics.Summary;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What two groups of three instruments or more say about one quantity.
 *
 * <p>The verdict rests on the adjusted probability of Welch's difference. The exact permutation test stands beside it as a check that
 * needs no normal scatter, but cannot carry the verdict: three instruments against three can be dealt out in 20 ways only, so that
 * its probability never falls below 2/20, and 2/252 of five against five does not survive a dozen questions.
 *
 * @param quantity what was compared
 * @param difference second minus first group's mean, with scatter of instruments and what the climate's correction may be wrong by
 * @param permutation the exact permutation test
 * @param first mean and scatter of the first group's instruments
 * @param second mean and scatter of the second group's instruments
 * @param mixed the mixed model, where instruments have several sittings
 * @param adjustedProbability of the difference, made larger for all questions asked at once
 */
public record Evidence(
        Quantity quantity,
        Estimate difference,
        PermutationResult permutation,
        Summary first,
        Summary second,
        Optional<MixedDifference> mixed,
        double adjustedProbability) {

    private static final double SIGNIFICANT = 0.05;

    /**
     * Whether the groups differ, all questions considered.
     *
     * @return true if the adjusted probability is below 5 %
     */
    public boolean differs() {
        return adjustedProbability < SIGNIFICANT;
    }

    /**
     * The probability of Welch's difference taken alone.
     *
     * @return two-sided, 0 to 1
     */
    public double probability() {
        return StudentProbability.twoSided(difference);
    }

    /**
     * Where the difference lies.
     *
     * @return its 95 % interval, taken alone
     */
    public Interval interval95() {
        return difference.interval95();
    }

    /**
     * The difference beside the scatter of instruments within groups.
     *
     * @return Hedges' g; empty where neither group scatters
     */
    public Optional<EffectSize> effectSize() {
        return EffectSize.of(first, second);
    }

    /**
     * The difference worth seeing: 1 % of frequency, 20 % of Q, 25 % of decay time, 1 dB, see {@link HearingThreshold}.
     *
     * @return in the quantity's unit
     */
    public double worthSeeing() {
        double size = HearingThreshold.of(quantity).size();
        return quantity == Quantity.LEVEL ? size : size * Math.abs(first.mean() + second.mean()) / 2;
    }

    /**
     * How many more instruments in each group would show {@link #worthSeeing} four times in five, asked alone at 5 %.
     *
     * @return 0 if these will do; empty if no number can be given
     */
    public OptionalInt furtherInEachGroup() {
        double scatter = pooled();
        return scatter > 0
                ? PowerAim.USUAL.furtherInEachGroup(Math.min(first.count(), second.count()), worthSeeing(), scatter)
                : OptionalInt.empty();
    }

    private double pooled() {
        int a = first.count() - 1;
        int b = second.count() - 1;
        return Math.sqrt((a * first.standardDeviation() * first.standardDeviation()
                        + b * second.standardDeviation() * second.standardDeviation())
                / (a + b));
    }

    Evidence adjusted(double probability) {
        return new Evidence(quantity, difference, permutation, first, second, mixed, probability);
    }
}
