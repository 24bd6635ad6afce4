package io.github.tapwright.statistics;

/**
 * A range that holds the true value with the coverage its holder's name says.
 *
 * @param lower lower end, may be negative infinity where nothing bounds it
 * @param upper upper end, not below the lower, may be infinite
 */
public record Interval(double lower, double upper) {

    /** Refuses ends that are no numbers or in the wrong order. */
    public Interval {
        if (!(lower <= upper)) {
            throw new IllegalArgumentException("an interval runs upwards, got " + lower + " to " + upper);
        }
    }

    /**
     * Whether a value lies inside, ends included.
     *
     * @param value the value, same unit
     * @return true inside
     */
    public boolean contains(double value) {
        return lower <= value && value <= upper;
    }

    /**
     * How wide it is.
     *
     * @return upper minus lower
     */
    public double width() {
        return upper - lower;
    }

    /**
     * The interval of the same difference taken the other way.
     *
     * @return −upper to −lower
     */
    public Interval negated() {
        return new Interval(-upper, -lower);
    }
}
