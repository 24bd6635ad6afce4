package io.github.tapwright.cli;

import io.github.tapwright.instrument.RefusedEntryException;
import java.util.function.Supplier;

/** Settings made from what was typed: what a record refuses, the command refuses in one line. */
final class Checked {

    private Checked() {}

    /** What the supplier makes; what it refuses as an argument is refused as an entry, in the same words. */
    static <T> T entry(Supplier<T> made) {
        try {
            return made.get();
        } catch (IllegalArgumentException e) {
            throw new RefusedEntryException(String.valueOf(e.getMessage()));
        }
    }
}
