package io.github.tapwright.statistics;

/**
 * Where the probabilities of a trend come from.
 */
public enum TrendMethod {
    /** Counting every order of the values. */
    EXACT,
    /** The normal distribution, for many values or values taken at the same time. */
    NORMAL
}
