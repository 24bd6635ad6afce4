package io.github.tapwright.instrument;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The strings at one sitting.
 *
 * @param state off, damped or free; empty if unknown
 * @param setName maker and gauge of the set; empty if unknown
 * @param fittedOn the day the set was put on; empty if unknown
 */
public record Strings(Optional<StringState> state, Optional<String> setName, Optional<LocalDate> fittedOn) {

    /** Nobody wrote anything down. */
    public static final Strings UNKNOWN = new Strings(Optional.empty(), Optional.empty(), Optional.empty());

    /** Refuses a set on an instrument without strings. */
    public Strings {
        setName = Entry.line("the string set", setName);
        if (state.equals(Optional.of(StringState.OFF)) && (setName.isPresent() || fittedOn.isPresent())) {
            throw new RefusedEntryException(
                    "strings that are off have no set and no date; say damped or free, or " + "leave set and date out");
        }
    }
}
