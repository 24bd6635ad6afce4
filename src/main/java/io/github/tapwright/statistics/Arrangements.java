package io.github.tapwright.statistics;

/**
 * What was counted when values were dealt out anew.
 */
public enum Arrangements {
    /** Every possible one: the probability is exact. */
    EVERY,
    /** Random ones, from a seed: the probability has an uncertainty of its own. */
    RANDOM
}
