package io.github.tapwright.comparison;

import java.util.EnumMap;
import java.util.Map;

/**
 * One condition of two sittings, and what it does to each quantity.
 *
 * @param condition such as "soundhole"
 * @param grades for each quantity
 * @param reason what is the same, different or unknown, and why it matters
 */
public record ConditionCheck(String condition, Map<Quantity, Grade> grades, String reason) {

    /** Keeps a copy of the map and refuses gaps in it. */
    public ConditionCheck {
        grades = Map.copyOf(grades);
        if (grades.size() != Quantity.values().length) {
            throw new IllegalArgumentException("every quantity needs its grade");
        }
    }

    /** The same grade for every quantity. */
    static ConditionCheck all(String condition, Grade grade, String reason) {
        return of(condition, grade, grade, grade, reason);
    }

    /** Q and decay time are one thing seen twice, so they share a grade. */
    static ConditionCheck of(String condition, Grade frequency, Grade decay, Grade level, String reason) {
        Map<Quantity, Grade> grades = new EnumMap<>(Quantity.class);
        grades.put(Quantity.FREQUENCY, frequency);
        grades.put(Quantity.Q, decay);
        grades.put(Quantity.DECAY_TIME, decay);
        grades.put(Quantity.LEVEL, level);
        return new ConditionCheck(condition, grades, reason);
    }

    /**
     * What it does to one quantity.
     *
     * @param quantity which
     * @return its grade
     */
    public Grade grade(Quantity quantity) {
        return grades.getOrDefault(quantity, Grade.REFUSED);
    }

    /**
     * The condition with its reason.
     *
     * @return such as "soundhole: open / covered: another air resonance"
     */
    public String words() {
        return condition + ": " + reason;
    }

    /**
     * The worst it does.
     *
     * @return the worst grade of any quantity
     */
    public Grade worst() {
        return grades.values().stream().reduce(Grade.FINE, Grade::or);
    }
}
