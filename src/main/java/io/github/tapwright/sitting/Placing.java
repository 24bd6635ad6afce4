package io.github.tapwright.sitting;

import io.github.tapwright.instrument.Entry;
import java.util.Optional;

/**
 * How the instrument was held and struck.
 *
 * @param support what carried it, such as "foam under both ends"; empty if unknown
 * @param strikeTool what struck it, such as "knuckle"; empty if unknown
 * @param strikePlace where it was struck, such as "bridge, treble side"; empty if unknown
 */
public record Placing(Optional<String> support, Optional<String> strikeTool, Optional<String> strikePlace) {

    /** Nobody wrote it down. */
    public static final Placing UNKNOWN = new Placing(Optional.empty(), Optional.empty(), Optional.empty());

    /** Takes blanks off the texts. */
    public Placing {
        support = Entry.line("the support", support);
        strikeTool = Entry.line("the strike tool", strikeTool);
        strikePlace = Entry.line("the strike place", strikePlace);
    }
}
