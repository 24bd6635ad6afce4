package io.github.tapwright.statistics;

/**
 * How distributions are carried through a formula by drawing from them, where {@link UncertaintyBudget} with its straight lines will
 * not do: strongly curved formulas, or inputs that are far from normal. Source: [GUM-S1], 7.
 *
 * @param trials how many draws, at least 1000; a million gives two good digits of an interval's ends
 * @param seed starts the generator; the same seed gives the same result
 */
public record MonteCarlo(int trials, long seed) {

    private static final int FEWEST = 1000;

    /** Refuses too few draws. */
    public MonteCarlo {
        if (trials < FEWEST) {
            throw new IllegalArgumentException("at least " + FEWEST + " draws are needed, got " + trials);
        }
    }
}
