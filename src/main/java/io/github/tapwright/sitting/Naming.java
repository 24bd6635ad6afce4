package io.github.tapwright.sitting;

import io.github.tapwright.mode.ModeName;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Joins the names the maker gave with the resonances an analysis found.
 *
 * <p>A name belongs to the resonance nearest to the frequency at which it was given, if that lies within
 * {@link #TOLERANCE}: another method moves a frequency by far less, and neighbouring modes of a body lie
 * further apart (common practice, no source). Of two names for one resonance the later holds. A suggestion
 * that the maker gave to another resonance is withdrawn, since a body has each mode once.
 */
public final class Naming {

    /** How far a resonance may lie from where it was named, as a share of that frequency. */
    public static final double TOLERANCE = 0.015;

    private Naming() {}

    /**
     * A resonance as the analysis named it.
     *
     * @param frequencyHz where it lies
     * @param name the suggestion, empty where the rules are not sure
     * @param reason why this name, or why none
     */
    public record Suggestion(double frequencyHz, Optional<ModeName> name, String reason) {}

    /**
     * The name that holds for a resonance.
     *
     * @param given the maker's word; empty if the maker said nothing
     * @param name the name; empty if there is none
     * @param reason why this name, or why none
     */
    public record Verdict(Optional<GivenName> given, Optional<String> name, String reason) {}

    /**
     * The names that hold.
     *
     * @param found the resonances of one analysis
     * @param given everything the maker said, in the order it was said; a clock may have been put back in between
     * @return one verdict for each resonance, in the same order
     */
    public static List<Verdict> join(List<Suggestion> found, List<GivenName> given) {
        Map<Integer, GivenName> byIndex = new HashMap<>();
        for (GivenName name : given) {
            nearest(found, name.frequencyHz()).ifPresent(i -> byIndex.put(i, name));
        }
        Set<ModeName> taken = new HashSet<>();
        byIndex.values().forEach(g -> g.mode().ifPresent(taken::add));
        List<Verdict> verdicts = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            verdicts.add(verdict(found.get(i), Optional.ofNullable(byIndex.get(i)), taken));
        }
        return verdicts;
    }

    /**
     * The resonance nearest to a frequency.
     *
     * @param found the resonances of one analysis
     * @param frequencyHz where to look
     * @return its index from 0, or empty if none lies within {@link #TOLERANCE}
     */
    public static Optional<Integer> nearest(List<Suggestion> found, double frequencyHz) {
        Optional<Integer> best = Optional.empty();
        double bestDistanceHz = TOLERANCE * frequencyHz;
        for (int i = 0; i < found.size(); i++) {
            double distanceHz = Math.abs(found.get(i).frequencyHz() - frequencyHz);
            if (distanceHz <= bestDistanceHz) {
                best = Optional.of(i);
                bestDistanceHz = distanceHz;
            }
        }
        return best;
    }

    private static Verdict verdict(Suggestion found, Optional<GivenName> given, Set<ModeName> taken) {
        if (given.isPresent()) {
            Optional<String> name = given.get().name();
            return new Verdict(given, name, name.isPresent() ? "named by the maker" : "the maker says it has no name");
        }
        if (found.name().filter(taken::contains).isPresent()) {
            return new Verdict(given, Optional.empty(), "the maker gave this name to another resonance");
        }
        return new Verdict(given, found.name().map(ModeName::words), found.reason());
    }
}
