package io.github.tapwright.comparison;

import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.HolmAdjustment;
import io.github.tapwright.statistics.StudentProbability;
import io.github.tapwright.statistics.Summary;
import io.github.tapwright.statistics.WelchDifference;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How much louder one instrument's plucks are than another's, string by string and overall.
 *
 * <p>Each string: the means' difference with u² = s₁²/n₁ + s₂²/n₂ and the degrees of freedom of Welch and Satterthwaite
 * [Welch1947]. Overall: the mean over the strings both have, each weighing the same, with the sum of their u². It speaks of these
 * plucks on this day; setting up again is not in it.
 *
 * @param quantity what was compared, with its unit
 * @param strings one for each string both instruments have
 * @param overall second minus first over all strings; empty if any string lacks an interval
 */
public record PluckComparison(String quantity, List<OnString> strings, Optional<Estimate> overall) {

    /** What the intervals do not hold. */
    public static final String CAUTION =
            "These intervals hold for these plucks in this set-up. Setting up and plucking again is not in them: repeat the whole run another"
                    + " day, or keep both runs as sittings and compare those, before you call one instrument louder.";

    private static final int MOST_PLUCKS = 1000;

    /**
     * The unit of means and differences.
     *
     * @return what stands after the comma of the quantity, such as "dB(A)"
     */
    public String unit() {
        return quantity.substring(quantity.lastIndexOf(", ") + 2);
    }

    /** Keeps a copy of the list. */
    public PluckComparison {
        strings = List.copyOf(strings);
    }

    /**
     * One string.
     *
     * @param string which, 1 the highest
     * @param first its plucks on the first instrument
     * @param second its plucks on the second instrument
     * @param difference second minus first; empty with fewer than two plucks on either side
     * @param adjustedProbability of a difference so great by chance, made larger for all strings asked at once [Holm1979]; empty where
     *     there is no difference
     * @param plucksNeeded how many plucks on each side would tell what is to be told at this scatter; empty where
     *     scatter is unknown, nothing is to be told, or more than a thousand would not do
     */
    public record OnString(
            int string,
            Sample first,
            Sample second,
            Optional<Estimate> difference,
            Optional<Double> adjustedProbability,
            Optional<Integer> plucksNeeded) {

        /**
         * The probability of the difference taken alone.
         *
         * @return two-sided, 0 to 1; empty where there is no difference
         */
        public Optional<Double> probability() {
            return difference.map(StudentProbability::twoSided);
        }

        private OnString adjusted(double probability) {
            return new OnString(string, first, second, difference, Optional.of(probability), plucksNeeded);
        }
    }

    /**
     * Plucks of one string.
     *
     * @param count how many
     * @param mean their mean
     * @param deviation their standard deviation; empty with one pluck
     */
    public record Sample(int count, double mean, Optional<Double> deviation) {

        static Sample of(List<Double> values) {
            double mean = values.stream().mapToDouble(v -> v).average().orElseThrow();
            double squares =
                    values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
            return new Sample(
                    values.size(),
                    mean,
                    values.size() > 1 ? Optional.of(Math.sqrt(squares / (values.size() - 1))) : Optional.empty());
        }

        /** The same for statistics that need a scatter. */
        Optional<Summary> summary() {
            return deviation.map(s -> new Summary(count, mean, s));
        }
    }

    /**
     * Compares.
     *
     * @param quantity what is compared, with its unit
     * @param first plucks of the first instrument
     * @param second plucks of the second instrument
     * @param toTell the difference worth telling, 1 dB or 1 LU; empty where there is no such convention
     * @param of the figure of a pluck; plucks without one are left out
     * @return the comparison
     */
    public static PluckComparison of(
            String quantity,
            Optional<Double> toTell,
            List<Pluck> first,
            List<Pluck> second,
            Function<Pluck, Optional<Double>> of) {
        List<OnString> strings = new ArrayList<>();
        TreeSet<Integer> numbers =
                first.stream().flatMap(p -> p.string().stream()).collect(Collectors.toCollection(TreeSet::new));
        for (int string : numbers) {
            List<Double> a = values(first, string, of);
            List<Double> b = values(second, string, of);
            if (!a.isEmpty() && !b.isEmpty()) {
                Sample sampleA = Sample.of(a);
                Sample sampleB = Sample.of(b);
                strings.add(new OnString(
                        string,
                        sampleA,
                        sampleB,
                        difference(sampleA, sampleB),
                        Optional.empty(),
                        toTell.flatMap(d -> plucksNeeded(sampleA, sampleB, d))));
            }
        }
        return new PluckComparison(quantity, adjusted(strings), overall(strings));
    }

    private static List<OnString> adjusted(List<OnString> strings) {
        return HolmAdjustment.of(
                strings,
                s -> s.probability().map(OptionalDouble::of).orElseGet(OptionalDouble::empty),
                OnString::adjusted);
    }

    private static List<Double> values(List<Pluck> plucks, int string, Function<Pluck, Optional<Double>> of) {
        return plucks.stream()
                .filter(p -> p.string().equals(Optional.of(string)))
                .flatMap(p -> of.apply(p).stream())
                .toList();
    }

    private static Optional<Estimate> difference(Sample a, Sample b) {
        return a.summary().flatMap(first -> b.summary().map(second -> WelchDifference.of(first, second)));
    }

    /** The smallest n for which the 95 % interval of a difference is no wider than what is to be told at this scatter. */
    private static Optional<Integer> plucksNeeded(Sample a, Sample b, double toTell) {
        if (a.deviation().isEmpty() || b.deviation().isEmpty()) {
            return Optional.empty();
        }
        double scatter = Math.hypot(a.deviation().orElseThrow(), b.deviation().orElseThrow());
        for (int n = 2; n <= MOST_PLUCKS; n++) {
            if (new Estimate(0, scatter / Math.sqrt(n), 2.0 * n - 2).halfWidth95() <= toTell) {
                return Optional.of(n);
            }
        }
        return Optional.empty();
    }

    /** Degrees of freedom of the mean by Welch and Satterthwaite again, [GUM] G.4. */
    private static Optional<Estimate> overall(List<OnString> strings) {
        if (strings.isEmpty() || strings.stream().anyMatch(s -> s.difference().isEmpty())) {
            return Optional.empty();
        }
        double sum = 0;
        double variance = 0;
        double perFreedom = 0;
        for (OnString s : strings) {
            Estimate d = s.difference().orElseThrow();
            double v = d.standardUncertainty() * d.standardUncertainty();
            sum += d.value();
            variance += v;
            perFreedom += v * v / d.degreesOfFreedom();
        }
        int n = strings.size();
        double freedom = perFreedom == 0 ? Double.POSITIVE_INFINITY : variance * variance / perFreedom;
        return Optional.of(new Estimate(sum / n, Math.sqrt(variance) / n, freedom));
    }
}
