package io.github.tapwright.sitting;

import io.github.tapwright.instrument.Entry;
import java.util.Optional;

/**
 * A small mass stuck to the instrument for a sitting, because how far it lowers the resonances tells how heavy the moving wood is.
 *
 * @param grams 0.1 to 1,000 g
 * @param place where it sat, such as "bridge, middle"; empty if unknown
 */
public record AddedMass(double grams, Optional<String> place) {

    /** Refuses masses no bench needs. */
    public AddedMass {
        Entry.figure("the added mass in g", Optional.of(grams), 0.1, 1000);
        place = Entry.line("the place of the added mass", place);
    }
}
