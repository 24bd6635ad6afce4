package io.github.tapwright.comparison;

import io.github.tapwright.sitting.PluckLevels;
import io.github.tapwright.sitting.PluckLevels.OfString;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Summary;
import io.github.tapwright.statistics.UncertaintyBudget;
import io.github.tapwright.statistics.UncertaintyBudget.Component;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The plucks of one sitting, string by string: each string weighs the same, and u² = Σ(s²_string/n_string)/strings² with the degrees of
 * freedom of Welch and Satterthwaite, as a comparison of two sittings takes it [Welch1947].
 *
 * <p>A string plucked once is taken to scatter as the sitting's others do together, s² = Σ(n − 1)·s²_string/Σ(n − 1). Where every string
 * was plucked once nothing says how far single plucks scatter, and u is 0.
 *
 * @param levels dB of the plucks of each string
 */
public record PluckedStrings(Map<Integer, List<Double>> levels) {

    /** Keeps a copy. */
    public PluckedStrings {
        levels = Collections.unmodifiableMap(new TreeMap<>(levels));
    }

    /**
     * The strings of a sitting.
     *
     * @param sitting any; without plucks there are none
     * @return its plucks by string
     */
    public static PluckedStrings of(SittingOutline sitting) {
        return new PluckedStrings(plucks(sitting)
                .collect(Collectors.groupingBy(
                        OfString::string, TreeMap::new, Collectors.mapping(OfString::lafMaxDb, Collectors.toList()))));
    }

    /** Which strings were plucked at a sitting, without sorting their levels. */
    static Set<Integer> numbers(SittingOutline sitting) {
        return plucks(sitting).map(OfString::string).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Stream<OfString> plucks(SittingOutline sitting) {
        return sitting.plucks().map(PluckLevels::levels).orElse(List.of()).stream();
    }

    /**
     * Whether its plucks say how far they scatter.
     *
     * @return false if no string was plucked twice
     */
    public boolean tellScatter() {
        return levels.values().stream().anyMatch(l -> l.size() > 1);
    }

    /** The mean over some of its strings. */
    Estimate mean(Set<Integer> strings) {
        Estimate single = single();
        List<Component> parts = strings.stream()
                .sorted()
                .map(s -> new Component(
                        "string " + s, ofMean(levels.getOrDefault(s, List.of()), single), 1.0 / strings.size()))
                .toList();
        double mean =
                parts.stream().mapToDouble(p -> p.input().value()).average().orElseThrow();
        Estimate combined = new UncertaintyBudget(mean, parts, List.of()).combined();
        boolean borrowed =
                strings.stream().anyMatch(s -> levels.getOrDefault(s, List.of()).size() == 1);
        return borrowed ? combined.knownNoBetterThan(single) : combined;
    }

    private static Estimate ofMean(Collection<Double> plucks, Estimate single) {
        double[] values = plucks.stream().mapToDouble(l -> l).toArray();
        return values.length == 1
                ? new Estimate(values[0], single.standardUncertainty(), single.degreesOfFreedom())
                : Summary.of(values).ofMean();
    }

    /** What one pluck alone is unsure by, from all strings plucked twice. */
    private Estimate single() {
        double squares = 0;
        double freedom = 0;
        for (List<Double> plucks : levels.values()) {
            if (plucks.size() > 1) {
                Summary s = Summary.of(plucks.stream().mapToDouble(l -> l).toArray());
                squares += (s.count() - 1) * s.standardDeviation() * s.standardDeviation();
                freedom += s.count() - 1;
            }
        }
        return freedom > 0 ? new Estimate(0, Math.sqrt(squares / freedom), freedom) : Estimate.of(0, 0);
    }
}
