package io.github.tapwright.comparison.trend;

import java.time.Instant;

/**
 * Something done to the instrument, after which its figures start anew.
 *
 * @param at when; where the day is not known, the first sitting after it
 * @param what in words, such as "strings fitted" or "finished"
 */
public record Event(Instant at, String what) {}
