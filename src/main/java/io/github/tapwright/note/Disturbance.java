package io.github.tapwright.note;

import java.util.Locale;

/**
 * Something that ends the free decay of a note before the recording ends.
 *
 * @param kind what it is
 * @param atSeconds when it begins, from the start of the recording
 */
public record Disturbance(Kind kind, double atSeconds) {

    /** What can end a free decay. */
    public enum Kind {
        /** Another pluck, knock or click. */
        SECOND_EVENT("something else sounds at %.2f s; only what comes before is analysed"),
        /** The level falls ever faster: faded out, or the string was damped. */
        FADE("from %.2f s the sound dies away faster than before: faded out or damped by hand; only what comes before"
                + " is analysed"),
        /** The string was stopped, or the sound cut off. */
        STOP("stopped or cut off at %.2f s; only what comes before is analysed"),
        /** The same samples over again. */
        LOOP("from %.2f s on the recording repeats itself: a loop, no decay; only what comes before is analysed");

        private final String wording;

        Kind(String wording) {
            this.wording = wording;
        }
    }

    /**
     * One line for the maker.
     *
     * @return what happens, and when
     */
    public String text() {
        return String.format(Locale.ROOT, kind.wording, atSeconds);
    }
}
