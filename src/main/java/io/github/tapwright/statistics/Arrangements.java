package io.github.tapwright.statistics;

/**
 * What was counted when values were dealt out anew.
 */
public enum Arrangements {
    /** Every possible one: the probability is exact. */
    EVERY,
    /** Random ones, from a seed: the probability has an uncertainty of its own. */
    RANDOM,
    /** Random ones until so many lay as far apart that more would not make the probability surer. */
    RANDOM_UNTIL_SURE
}
