package io.github.tapwright.comparison;

import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.mode.ResonanceMatching;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.Sitting;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Two sittings side by side.
 *
 * @param comparability whether they may be compared at all
 * @param changes resonances found in both, lowest first
 * @param onlyFirst resonances of the first that have no partner
 * @param onlySecond resonances of the second that have no partner
 */
public record SittingComparison(
        Comparability comparability,
        List<ResonanceChange> changes,
        List<ShownResonance> onlyFirst,
        List<ShownResonance> onlySecond) {

    /** Keeps copies of the lists. */
    public SittingComparison {
        changes = List.copyOf(changes);
        onlyFirst = List.copyOf(onlyFirst);
        onlySecond = List.copyOf(onlySecond);
    }

    /**
     * Compares the latest analyses of two sittings, under the names that hold.
     *
     * @param first before
     * @param second after
     * @param bench what is known about the workshop
     * @param despite the maker's reason to see refused figures all the same
     * @return the comparison
     */
    public static SittingComparison of(Sitting first, Sitting second, BenchKnowledge bench, Optional<String> despite) {
        Comparability comparability = Comparability.of(first, second, bench, despite);
        List<ShownResonance> before = new ArrayList<>(first.resonances(first.latest()));
        List<ShownResonance> after = new ArrayList<>(second.resonances(second.latest()));
        List<ResonanceChange> changes = new ArrayList<>();
        List<ResonanceMatching.Pair> pairs = ResonanceMatching.match(underNames(before), underNames(after));
        Optional<ResonanceMatching.Pair> zero = servingAsZero(pairs);
        for (ResonanceMatching.Pair pair : pairs) {
            ShownResonance a = take(before, pair.first());
            ShownResonance b = take(after, pair.second());
            Optional<String> name = a.name().or(b::name);
            Optional<Correction> climate = ClimateCorrection.of(
                    b.found().resonance().frequencyHz().value(),
                    a.mode().or(b::mode),
                    second.conditions().air(),
                    first.conditions().air(),
                    bench.sensitivities());
            changes.add(ResonanceChange.between(
                    name,
                    a.found().resonance(),
                    b.found().resonance(),
                    zero.filter(z -> !z.equals(pair)).map(z -> level(z, pair, bench.spread(), comparability)),
                    climate,
                    bench.spread(),
                    comparability));
        }
        return new SittingComparison(comparability, AskedAtOnce.adjusted(changes), before, after);
    }

    private static Optional<ResonanceMatching.Pair> servingAsZero(List<ResonanceMatching.Pair> pairs) {
        return LevelReference.strongest(pairs, p -> p.first().resonance());
    }

    private static Difference level(
            ResonanceMatching.Pair zero, ResonanceMatching.Pair pair, SetUpSpread spread, Comparability comparability) {
        return Difference.between(
                Quantity.LEVEL,
                LevelReference.against(zero.first().resonance(), pair.first().resonance()),
                LevelReference.against(zero.second().resonance(), pair.second().resonance()),
                Optional.empty(),
                spread,
                comparability);
    }

    /**
     * How many questions were asked at once.
     *
     * @return three of each resonance, two of the one that serves as 0 dB, as far as they are shown
     */
    public int questions() {
        return changes.stream().mapToInt(c -> c.questions().size()).sum();
    }

    private static List<NamedResonance> underNames(List<ShownResonance> shown) {
        return shown.stream()
                .map(s -> new NamedResonance(s.found().resonance(), s.mode(), s.reason()))
                .toList();
    }

    private static ShownResonance take(List<ShownResonance> from, NamedResonance matched) {
        ShownResonance found = from.stream()
                .filter(s -> s.found().resonance().equals(matched.resonance()))
                .findFirst()
                .orElseThrow();
        from.remove(found);
        return found;
    }
}
