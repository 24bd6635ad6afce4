package io.github.tapwright.validation;

/**
 * How far a number may lie from what is expected, and why that far.
 *
 * @param below how much less is allowed, in the quantity's unit, not negative; infinite if any
 * @param above how much more is allowed, likewise
 * @param reason why
 */
public record Tolerance(double below, double above, String reason) {

    /** Refuses a tolerance without a reason, or one that allows nothing or everything by mistake. */
    public Tolerance {
        if (!(below >= 0 && above >= 0) || reason.isBlank()) {
            throw new IllegalArgumentException("a tolerance needs two bounds and a reason");
        }
    }

    static Tolerance within(double either, String reason) {
        return new Tolerance(either, either, reason);
    }

    static Tolerance share(double share, double expected, String reason) {
        return within(share * Math.abs(expected), reason);
    }

    static Tolerance atLeast(String reason) {
        return new Tolerance(0, Double.POSITIVE_INFINITY, reason);
    }

    boolean allows(double expected, double got) {
        return got >= expected - below && got <= expected + above;
    }

    /**
     * The bounds as people read them.
     *
     * @return such as "± 0.1", "at least", "+0.2 −0.4"
     */
    public String words() {
        if (below == above) {
            return below == 0 ? "exact" : "± " + Numbers.bound(below);
        }
        if (below == 0 && above == Double.POSITIVE_INFINITY) {
            return "at least";
        }
        return "+" + Numbers.bound(above) + " −" + Numbers.bound(below);
    }
}
