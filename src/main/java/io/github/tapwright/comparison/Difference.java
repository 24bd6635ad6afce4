package io.github.tapwright.comparison;

import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Interval;
import io.github.tapwright.statistics.StudentProbability;
import io.github.tapwright.statistics.UncertaintyBudget;
import io.github.tapwright.statistics.UncertaintyBudget.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One quantity of two sittings: how far apart, how sure, and whether one may say so.
 *
 * <p>d = (b + k) − a with k the correction to A's climate; u²(d) = u_a² + u_b² + s_a² + s_b² + u_k² for the spread s of setting up,
 * each with its degrees of freedom; the whole has no more of them than it has without the correction, and without s where that is assumed, so that
 * nothing assumed makes a difference surer. Source: [GUM], 5.1.2 and G.4. A comparison asks many such questions at once: {@link Verdict}.
 *
 * @param quantity what is compared
 * @param first before
 * @param second after, as measured
 * @param correction what was added to the second; empty if nothing was
 * @param budget of second (corrected) minus first
 * @param estimate corrected second minus first, with its combined uncertainty
 * @param grade what the conditions do to this quantity
 * @param shown whether the figures may be shown
 * @param weight its part of the 5 % that all questions asked at once may err by, 0 to 1, all of them 1; empty if it is no question of its own
 * @param adjustedProbability of a difference so great by chance alone, made larger for all questions asked at once
 */
public record Difference(
        Quantity quantity,
        Estimate first,
        Estimate second,
        Optional<Correction> correction,
        UncertaintyBudget budget,
        Estimate estimate,
        Grade grade,
        boolean shown,
        Optional<Double> weight,
        double adjustedProbability) {

    private static final String SETTING_UP = "setting up, A and B";

    /** What one may say. */
    public enum Verdict {
        /** It differs, all questions of the comparison considered [Holm1979]. */
        DIFFERS,
        /** Zero lies outside the 95 % interval, but so it does for one in twenty questions by chance, and many were asked. */
        DIFFERS_ALONE,
        /** Zero lies inside. */
        CANNOT_TELL,
        /** The conditions forbid the comparison. */
        REFUSED;

        private static final double SIGNIFICANT = 0.05;

        /**
         * Judges.
         *
         * @param shown whether the conditions allow the comparison
         * @param difference with its uncertainty
         * @param adjustedProbability of a difference so great by chance, all questions considered
         * @return what one may say
         */
        public static Verdict of(boolean shown, Estimate difference, double adjustedProbability) {
            if (!shown) {
                return REFUSED;
            }
            if (!difference.differsFromZero()) {
                return CANNOT_TELL;
            }
            return adjustedProbability < SIGNIFICANT ? DIFFERS : DIFFERS_ALONE;
        }
    }

    static Difference between(
            Quantity quantity,
            Estimate first,
            Estimate second,
            Optional<Correction> correction,
            SetUpSpread spread,
            Comparability comparability) {
        List<Component> components = new ArrayList<>();
        components.add(new Component("fit and strikes, A", first, -1));
        components.add(new Component("fit and strikes, B", second, 1));
        components.add(new Component(SETTING_UP, settingUp(quantity, first, second, spread), 1));
        components.addAll(Correction.components(correction));
        double added = correction.map(Correction::added).orElse(0.0);
        Grade grade = comparability.grade(quantity);
        UncertaintyBudget budget = new UncertaintyBudget(second.value() + added - first.value(), components, List.of());
        Estimate estimate = budget.combinedAssuming(Stream.concat(
                        Correction.causes(correction), spread.known(quantity).assumed(SETTING_UP))
                .collect(Collectors.toSet()));
        return new Difference(
                quantity,
                first,
                second,
                correction,
                budget,
                estimate,
                grade,
                comparability.shows(quantity),
                Optional.empty(),
                StudentProbability.twoSided(estimate));
    }

    /** The same as one of several questions. */
    Difference asked(double part, double probability) {
        return new Difference(
                quantity, first, second, correction, budget, estimate, grade, shown, Optional.of(part), probability);
    }

    /** The same with its probability made larger, without being a question of its own. */
    Difference adjusted(double probability) {
        return new Difference(quantity, first, second, correction, budget, estimate, grade, shown, weight, probability);
    }

    /** Both set-ups scatter by themselves, but by one and the same estimate: two parts would pretend twice its degrees of freedom. */
    private static Estimate settingUp(Quantity quantity, Estimate first, Estimate second, SetUpSpread spread) {
        double a = spread.of(quantity, first.value()).standardUncertainty();
        double b = spread.of(quantity, second.value()).standardUncertainty();
        return new Estimate(0, Math.hypot(a, b), spread.known(quantity).degreesOfFreedom());
    }

    /**
     * The difference as it was measured, corrected for nothing.
     *
     * @return second minus first
     */
    public double asMeasured() {
        return second.value() - first.value();
    }

    /**
     * What one may say of it.
     *
     * @return the verdict
     */
    public Verdict verdict() {
        return Verdict.of(shown, estimate, adjustedProbability);
    }

    /**
     * How often chance alone brings so great a difference, this question asked alone.
     *
     * @return two-sided, 0 to 1
     */
    public double probability() {
        return StudentProbability.twoSided(estimate);
    }

    /**
     * Where the true difference lies.
     *
     * @return its 95 % interval
     */
    public Interval interval95() {
        return estimate.interval95();
    }

    /**
     * Whether people are likely to hear it.
     *
     * @return by the whole 95 % interval
     */
    public Audibility audibility() {
        return HearingThreshold.of(quantity).judge(interval95(), first.value());
    }
}
