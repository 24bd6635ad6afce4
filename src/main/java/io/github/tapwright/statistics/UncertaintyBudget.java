package io.github.tapwright.statistics;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Everything a result depends on, and what each part adds to its uncertainty.
 *
 * <p>u² = Σᵢ Σⱼ cᵢcⱼuᵢuⱼrᵢⱼ, the law of propagation; ν = u⁴/Σ(cᵢuᵢ)⁴/νᵢ by Welch and Satterthwaite where no parts are correlated.
 * That formula does not hold for correlated parts; then the smallest ν among the parts that matter is taken, which is on the safe
 * side. Source: [GUM], 5.1.2, 5.2.2, G.4.1.
 *
 * @param value the result, in its unit
 * @param components the parts, at least one, no name twice
 * @param correlations between parts; parts not named are independent
 */
public record UncertaintyBudget(double value, List<Component> components, List<Correlation> correlations) {

    /**
     * One part.
     *
     * @param name unique in the budget
     * @param input the input quantity, in its own unit
     * @param sensitivity c = ∂result/∂input, the result's unit per unit of the input
     */
    public record Component(String name, Estimate input, double sensitivity) {

        /** Refuses a sensitivity that is no number. */
        public Component {
            if (!Double.isFinite(sensitivity)) {
                throw new IllegalArgumentException("the sensitivity to " + name + " must be a finite number");
            }
        }

        /**
         * What this part alone adds.
         *
         * @return c·u, signed, in the result's unit
         */
        public double contribution() {
            return sensitivity * input.standardUncertainty();
        }
    }

    /**
     * Two inputs that err together.
     *
     * @param first one component's name
     * @param second another's
     * @param coefficient r, −1 to 1
     */
    public record Correlation(String first, String second, double coefficient) {

        /** Refuses what is no correlation. */
        public Correlation {
            if (!(Math.abs(coefficient) <= 1) || first.equals(second)) {
                throw new IllegalArgumentException("a correlation lies between −1 and 1 and joins two parts, got "
                        + coefficient + " for " + first + " and " + second);
            }
        }
    }

    /** Keeps copies and refuses names that are missing or there twice. */
    public UncertaintyBudget {
        components = List.copyOf(components);
        correlations = List.copyOf(correlations);
        var names = components.stream().map(Component::name).collect(Collectors.toSet());
        if (components.isEmpty() || names.size() != components.size()) {
            throw new IllegalArgumentException("a budget needs parts, each with a name of its own");
        }
        long joined = correlations.stream()
                .map(c -> Set.of(c.first(), c.second()))
                .distinct()
                .count();
        if (joined != correlations.size()) {
            throw new IllegalArgumentException(
                    "two parts are joined by more than one correlation: give each pair once");
        }
        for (Correlation correlation : correlations) {
            if (!names.contains(correlation.first()) || !names.contains(correlation.second())) {
                throw new IllegalArgumentException(
                        "no part for the correlation of " + correlation.first() + " and " + correlation.second());
            }
        }
    }

    /**
     * A budget of independent parts.
     *
     * @param value the result
     * @param components the parts
     * @return the budget
     */
    public static UncertaintyBudget independent(double value, Component... components) {
        return new UncertaintyBudget(value, List.of(components), List.of());
    }

    /**
     * The result with its combined standard uncertainty.
     *
     * @return value, u and ν
     */
    public Estimate combined() {
        return new Estimate(value, Math.sqrt(variance()), freedom());
    }

    /**
     * The result where some parts are assumed: they add their u, but the whole has no more degrees of freedom than the other parts have
     * together. Welch and Satterthwaite's formula would take them for perfectly known, and a result could be surer with an assumption
     * than without.
     *
     * @param assumed names of parts that may only make it less sure
     * @return value, u and the smaller ν
     */
    public Estimate combinedAssuming(Set<String> assumed) {
        List<Component> others =
                components.stream().filter(c -> !assumed.contains(c.name())).toList();
        if (others.isEmpty() || others.size() == components.size()) {
            return combined();
        }
        List<Correlation> amongOthers = correlations.stream()
                .filter(r -> !assumed.contains(r.first()) && !assumed.contains(r.second()))
                .toList();
        return combined().knownNoBetterThan(new UncertaintyBudget(value, others, amongOthers).combined());
    }

    /**
     * The share of the variance that one part brings by itself.
     *
     * @param component one of the parts
     * @return (c·u)² over the combined variance; above 1 where a correlation takes some of it back, 0 without any uncertainty
     */
    public double share(Component component) {
        double variance = variance();
        return variance > 0 ? component.contribution() * component.contribution() / variance : 0;
    }

    private double variance() {
        double variance = 0;
        for (Component component : components) {
            variance += component.contribution() * component.contribution();
        }
        for (Correlation correlation : correlations) {
            variance += 2
                    * correlation.coefficient()
                    * contribution(correlation.first())
                    * contribution(correlation.second());
        }
        return Math.max(0, variance);
    }

    private double contribution(String name) {
        return components.stream()
                .filter(c -> c.name().equals(name))
                .mapToDouble(Component::contribution)
                .sum();
    }

    private double freedom() {
        List<Component> uncertain =
                components.stream().filter(c -> c.contribution() != 0).toList();
        if (!correlations.isEmpty()) {
            return uncertain.stream()
                    .mapToDouble(c -> c.input().degreesOfFreedom())
                    .min()
                    .orElse(Double.POSITIVE_INFINITY);
        }
        double variance = variance();
        double sum = uncertain.stream()
                .mapToDouble(c -> Math.pow(c.contribution() / Math.sqrt(variance), 4)
                        / c.input().degreesOfFreedom())
                .sum();
        return 1 / sum;
    }
}
