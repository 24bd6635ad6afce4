package io.github.tapwright.comparison;

import io.github.tapwright.mode.ModeName;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Estimate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a question about many sittings is about: one quantity of one named resonance, or how loud plucks are.
 *
 * <p>Not a resonance's level: it is measured against its own sitting's strongest, so that where another became the strongest every level
 * would seem to move. Two sittings have one resonance in common to measure against; of many there need not be one.
 *
 * @param resonance which; empty for the overall level of plucks
 * @param quantity what of it
 */
public record Subject(Optional<ModeName> resonance, Quantity quantity) {

    /** The overall level of plucks: the mean over strings of the largest A-weighted level (F), dB. */
    public static final Subject PLUCKS = new Subject(Optional.empty(), Quantity.LEVEL);

    private static final List<Subject> OF_TAPS = Arrays.stream(ModeName.values())
            .flatMap(m -> Stream.of(Quantity.FREQUENCY, Quantity.Q, Quantity.DECAY_TIME)
                    .map(q -> new Subject(Optional.of(m), q)))
            .toList();

    /** Refuses a level that means something else in each sitting. */
    public Subject {
        if (resonance.isPresent() && quantity == Quantity.LEVEL) {
            throw new IllegalArgumentException("each sitting's 0 dB is its own strongest resonance; levels of "
                    + resonance.get().words() + " in many sittings cannot stand beside each other");
        }
    }

    /**
     * Frequency, Q and decay time of every named resonance.
     *
     * @return in the order of the names
     */
    public static List<Subject> ofTaps() {
        return OF_TAPS;
    }

    /** The figure among resonances by name. */
    Optional<Estimate> in(Map<ModeName, Resonance> named) {
        return resonance.flatMap(name -> Optional.ofNullable(named.get(name))).map(this::of);
    }

    /**
     * The resonances of a sitting whose name no other bears.
     *
     * @param sitting any
     * @return by their names
     */
    public static Map<ModeName, Resonance> named(SittingOutline sitting) {
        Map<ModeName, Resonance> named = new EnumMap<>(ModeName.class);
        Set<ModeName> twice = EnumSet.noneOf(ModeName.class);
        for (ShownResonance shown : sitting.resonances()) {
            shown.mode().ifPresent(name -> {
                if (named.put(name, shown.found().resonance()) != null) {
                    twice.add(name);
                }
            });
        }
        named.keySet().removeAll(twice);
        return named;
    }

    /** Whether this is the decay time of the resonance whose Q the other is; Q over π times frequency, it says little that is new. */
    boolean isDecayTo(Subject q) {
        return quantity == Quantity.DECAY_TIME && q.quantity == Quantity.Q && resonance.equals(q.resonance);
    }

    private Estimate of(Resonance found) {
        return switch (quantity) {
            case FREQUENCY -> found.frequencyHz();
            case Q -> found.q();
            case DECAY_TIME -> found.decayTimeSeconds();
            case LEVEL -> throw new IllegalStateException("a level of " + whose() + " is refused when it is asked for");
        };
    }

    /**
     * Whose quantity it is.
     *
     * @return such as "main top" or "plucks"
     */
    public String whose() {
        return resonance.map(ModeName::words).orElse("plucks");
    }

    /**
     * The subject at the head of figures.
     *
     * @return such as "main top, frequency (Hz)"; a pure number has no unit
     */
    public String wordsWithUnit() {
        return words() + (quantity.unit().isEmpty() ? "" : " (" + quantity.unit() + ")");
    }

    /**
     * The subject as people read it.
     *
     * @return such as "main top, frequency"
     */
    public String words() {
        return whose() + ", " + quantity.words();
    }
}
