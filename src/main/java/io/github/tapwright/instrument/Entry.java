package io.github.tapwright.instrument;

import java.util.Optional;

/** Checks what a maker enters: plausible figures, and text that can be shown on one line. */
public final class Entry {

    /** Longest text on one line, in characters. */
    public static final int LONGEST_LINE = 200;

    /** Longest note, in characters; notes may have several lines. */
    public static final int LONGEST_NOTE = 10_000;

    private Entry() {}

    /**
     * A figure within plausible limits, or unknown.
     *
     * @param what the figure's name and unit, such as "scale length in mm"
     * @param figure the figure, empty if unknown
     * @param low least plausible value
     * @param high greatest plausible value
     * @return the figure
     * @throws RefusedEntryException if the figure lies outside the limits or is no number
     */
    public static Optional<Double> figure(String what, Optional<Double> figure, double low, double high) {
        if (figure.isPresent() && !(figure.get() >= low && figure.get() <= high)) {
            throw new RefusedEntryException(
                    "%s must lie between %s and %s, was %s; correct it, or leave it out if it is unknown"
                            .formatted(what, plain(low), plain(high), plain(figure.get())));
        }
        return figure;
    }

    /**
     * One line of text, surrounding blanks taken off; blank text counts as unknown.
     *
     * @param what the text's name, such as "bracing"
     * @param text the text, empty if unknown
     * @return the text without surrounding blanks
     * @throws RefusedEntryException if the text is longer than {@value #LONGEST_LINE} characters or has line breaks
     */
    public static Optional<String> line(String what, Optional<String> text) {
        Optional<String> stripped = text.map(String::strip).filter(t -> !t.isEmpty());
        stripped.ifPresent(t -> {
            if (t.chars().anyMatch(Character::isISOControl)) {
                throw new RefusedEntryException(what + " must be one line without control characters; shorten it to "
                        + "one line and put the rest into the notes");
            }
            refuseLongerThan(LONGEST_LINE, what, t);
        });
        return stripped;
    }

    /**
     * A note of any number of lines, surrounding blanks taken off; a blank note counts as none.
     *
     * @param what the note's name
     * @param text the note, empty if there is none
     * @return the note without surrounding blanks
     * @throws RefusedEntryException if the note is longer than {@value #LONGEST_NOTE} characters
     */
    public static Optional<String> note(String what, Optional<String> text) {
        Optional<String> stripped = text.map(String::strip).filter(t -> !t.isEmpty());
        stripped.ifPresent(t -> refuseLongerThan(LONGEST_NOTE, what, t));
        return stripped;
    }

    private static void refuseLongerThan(int limit, String what, String text) {
        if (text.length() > limit) {
            throw new RefusedEntryException(
                    "%s may have %d characters at most, has %d; shorten it".formatted(what, limit, text.length()));
        }
    }

    private static String plain(double figure) {
        return figure == Math.rint(figure) && Math.abs(figure) < 1e9
                ? Long.toString((long) figure)
                : Double.toString(figure);
    }
}
