package io.github.tapwright.desktop.shelf;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.sitting.Moment;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;

/** When a sitting was taken, as the maker types it: a day such as 2026-03-14, or a day and a time such as 2026-03-14 09:26. */
final class TakenText {

    private TakenText() {}

    /**
     * Reads it.
     *
     * @param typed a day, or a day and a time by the clocks of the workshop
     * @param kept the moment it was shown for; what reads the same is that moment, to its second
     * @param zone the workshop's
     * @return the moment
     * @throws RefusedEntryException if it is neither
     */
    static Moment read(String typed, Moment kept, ZoneId zone) {
        String text = typed.strip();
        if (text.equals(kept.text(zone))) {
            return kept;
        }
        try {
            return text.matches("\\S+[ T]\\S+")
                    ? Moment.at(LocalDateTime.parse(text.replace(' ', 'T'))
                            .atZone(zone)
                            .toInstant())
                    : Moment.on(LocalDate.parse(text), zone);
        } catch (DateTimeParseException e) {
            throw new RefusedEntryException("taken: " + (text.isEmpty() ? "nothing" : "\"" + typed + "\"")
                    + " is no day; type one such as 2026-03-14, or with its time, 2026-03-14 09:26");
        }
    }
}
