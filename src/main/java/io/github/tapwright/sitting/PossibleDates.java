package io.github.tapwright.sitting;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.Strings;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;

/** Refuses days that cannot be: a recording still to come or before anybody made one, strings fitted after they were struck. */
public final class PossibleDates {

    private static final int FIRST_YEAR = 1900;

    private final Clock clock;

    /**
     * By a clock.
     *
     * @param clock tells the day, in the workshop's zone
     */
    public PossibleDates(Clock clock) {
        this.clock = clock;
    }

    /**
     * Refuses a day typed wrong. One day later than today passes, because days begin elsewhere first. A clock that was put back
     * refuses nothing that the archive shows to be past.
     *
     * @param taken when the recordings are said to have been made
     * @param lastAdded when the last one was added; {@link Instant#MIN} if there is none
     * @throws RefusedEntryException if that cannot be
     */
    void refuseImpossible(Moment taken, Instant lastAdded) {
        refuseImpossible("a sitting", taken, lastAdded);
    }

    /** The same of something else that is recorded, said by its name. */
    void refuseImpossible(String what, Moment taken, Instant lastAdded) {
        LocalDate day = day(taken.instant());
        LocalDate today = day(clock.instant().isBefore(lastAdded) ? lastAdded : clock.instant());
        if (day.isAfter(today.plusDays(1))) {
            throw new RefusedEntryException(what + " on " + day + " is still to come, today is " + today
                    + "; give the day it was recorded, or set the computer's clock right");
        }
        if (day.getYear() < FIRST_YEAR) {
            throw new RefusedEntryException(what + " on " + day + " lies before the year " + FIRST_YEAR
                    + "; give the day it was recorded, such as " + today);
        }
    }

    /**
     * Refuses strings fitted on a later day than they were struck on.
     *
     * @param taken when the recordings were made
     * @param conditions what is written down
     * @throws RefusedEntryException if that cannot be
     */
    public void refuseLaterStrings(Instant taken, Conditions conditions) {
        refuseLaterStrings(day(taken), conditions.strings());
    }

    /**
     * Refuses strings fitted on a later day than they were struck on.
     *
     * @param struck the day of the sitting, in the workshop's zone
     * @param strings what is written down of them
     * @throws RefusedEntryException if that cannot be
     */
    public static void refuseLaterStrings(LocalDate struck, Strings strings) {
        strings.fittedOn().filter(fitted -> fitted.isAfter(struck)).ifPresent(fitted -> {
            throw new RefusedEntryException("strings fitted on " + fitted + " cannot have been struck on " + struck
                    + "; correct the day of the strings or of the sitting, or leave the day of the strings out");
        });
    }

    private LocalDate day(Instant instant) {
        return LocalDate.ofInstant(instant, clock.getZone());
    }
}
