package io.github.tapwright.statistics;

import java.util.OptionalInt;
import java.util.function.IntPredicate;

/**
 * How many instruments it takes to see a difference.
 *
 * <p>The chance that |T| exceeds the two-sided critical value of Student's t when the true difference is d and the scatter s:
 * T follows the noncentral t distribution with δ = d/(s√(2/n)) and 2(n−1) degrees of freedom for two groups of n. Source: [Cohen1988]. s is taken as known; from a few instruments it is a rough guess, and the
 * number asked for is then rough too.
 *
 * @param power the chance of seeing it, between significance and 1
 * @param significance the two-sided chance of a false alarm, between 0 and 1
 */
public record PowerAim(double power, double significance) {

    /** 80 % power at 5 %. */
    public static final PowerAim USUAL = new PowerAim(0.8, 0.05);

    /** More than this many instruments are never proposed. */
    public static final int MOST = 10_000;

    /** Refuses aims no study can have. */
    public PowerAim {
        if (!(significance > 0 && significance < power && power < 1)) {
            throw new IllegalArgumentException(
                    "power lies between significance and 1, got " + power + " and " + significance);
        }
    }

    /**
     * How many in each of two groups.
     *
     * @param difference to be seen, not zero
     * @param standardDeviation of single instruments within a group, positive, same unit
     * @return the smallest n; empty if more than {@link #MOST}
     */
    public OptionalInt eachGroup(double difference, double standardDeviation) {
        double effect = effect(difference, standardDeviation);
        return smallest(n -> reached(effect * Math.sqrt(n / 2.0), 2 * (n - 1.0)));
    }

    /**
     * How many more in each of two groups.
     *
     * @param alreadyInEach how many are there, not negative
     * @param difference to be seen, not zero
     * @param standardDeviation of single instruments within a group, positive, same unit
     * @return 0 if those will do; empty if more than {@link #MOST} are needed in all
     */
    public OptionalInt furtherInEachGroup(int alreadyInEach, double difference, double standardDeviation) {
        OptionalInt needed = eachGroup(difference, standardDeviation);
        return needed.isPresent() ? OptionalInt.of(Math.max(0, needed.getAsInt() - alreadyInEach)) : needed;
    }

    private static double effect(double difference, double standardDeviation) {
        double effect = Math.abs(difference) / standardDeviation;
        if (!(standardDeviation > 0) || !(effect > 0)) {
            throw new IllegalArgumentException("a difference and a scatter above zero are needed, got " + difference
                    + " and " + standardDeviation);
        }
        return effect;
    }

    private boolean reached(double shift, double freedom) {
        double critical = StudentQuantile.of(1 - significance / 2, freedom);
        double missed =
                NoncentralT.cumulative(critical, freedom, shift) - NoncentralT.cumulative(-critical, freedom, shift);
        return 1 - missed >= power;
    }

    private static OptionalInt smallest(IntPredicate enough) {
        if (!enough.test(MOST)) {
            return OptionalInt.empty();
        }
        int tooFew = 1;
        int plenty = MOST;
        while (plenty - tooFew > 1) {
            int middle = (plenty + tooFew) / 2;
            if (enough.test(middle)) {
                plenty = middle;
            } else {
                tooFew = middle;
            }
        }
        return OptionalInt.of(plenty);
    }
}
