package io.github.tapwright.comparison.trend;

import java.time.Instant;
import java.time.LocalDate;

/**
 * Something done to the instrument, after which its figures start anew.
 *
 * @param at when; where the day is not known, the first sitting after it
 * @param day the same as a day where the workshop is
 * @param what in words, such as "strings fitted" or "finished"
 */
public record Event(Instant at, LocalDate day, String what) {

    @Override
    public String toString() {
        return day + " (" + what + ")";
    }
}
