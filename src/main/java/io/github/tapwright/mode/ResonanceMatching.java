package io.github.tapwright.mode;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds which resonance of one sitting is which of another.
 *
 * <p>Resonances of one name belong together. The others are paired nearest first on a scale of relative
 * frequency, at most 6 % apart (a semitone): farther than a body usually moves, nearer than most neighbours.
 * Common practice, no source. No pair crosses another, for resonances rarely change places.
 */
public final class ResonanceMatching {

    private static final double FARTHEST = 0.06;

    private ResonanceMatching() {}

    /**
     * A pair.
     *
     * @param first from the first list
     * @param second from the second list
     */
    public record Pair(NamedResonance first, NamedResonance second) {}

    /**
     * Pairs two lists.
     *
     * @param first resonances of one sitting
     * @param second resonances of the other
     * @return pairs, lowest first; what found no partner is left out
     */
    public static List<Pair> match(List<NamedResonance> first, List<NamedResonance> second) {
        List<Pair> candidates = new ArrayList<>();
        for (NamedResonance a : first) {
            for (NamedResonance b : second) {
                if (mayBelong(a, b)) {
                    candidates.add(new Pair(a, b));
                }
            }
        }
        candidates.sort(Comparator.comparing((Pair p) -> !sameName(p)).thenComparingDouble(ResonanceMatching::apart));
        List<Pair> pairs = new ArrayList<>();
        for (Pair candidate : candidates) {
            if (pairs.stream().allMatch(p -> agrees(p, candidate))) {
                pairs.add(candidate);
            }
        }
        pairs.sort(Comparator.comparingDouble(p -> hertz(p.first())));
        return pairs;
    }

    private static boolean mayBelong(NamedResonance a, NamedResonance b) {
        boolean bothNamed = a.name().isPresent() && b.name().isPresent();
        return bothNamed ? a.name().equals(b.name()) : apart(new Pair(a, b)) <= FARTHEST;
    }

    private static boolean sameName(Pair p) {
        return p.first().name().isPresent()
                && p.first().name().equals(p.second().name());
    }

    private static double apart(Pair p) {
        return Math.abs(Math.log(hertz(p.second()) / hertz(p.first())));
    }

    /** Two pairs agree if they share nothing and do not cross. */
    private static boolean agrees(Pair p, Pair q) {
        double below = hertz(p.first()) - hertz(q.first());
        double above = hertz(p.second()) - hertz(q.second());
        return below * above > 0;
    }

    private static double hertz(NamedResonance r) {
        return r.resonance().frequencyHz().value();
    }
}
