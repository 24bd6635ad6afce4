package io.github.tapwright.desktop.work;

import java.util.Optional;

/**
 * Something the maker should know.
 *
 * @param kind how it is meant
 * @param words what is said
 * @param undo the way back, where there is one
 */
public record Notice(Kind kind, String words, Optional<Undo> undo) {

    /** How a notice is meant. */
    public enum Kind {
        /** Something went as it should. */
        DONE,
        /** Something did not, and the words say what to do about it. */
        TROUBLE
    }

    /** Takes back what was done. */
    @FunctionalInterface
    public interface Undo {

        /** Takes it back. */
        void run();
    }
}
