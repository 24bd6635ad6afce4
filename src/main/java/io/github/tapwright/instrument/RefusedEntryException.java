package io.github.tapwright.instrument;

/**
 * Something the maker entered cannot be right or does not fit what is on the shelf; nothing was changed.
 */
public final class RefusedEntryException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /**
     * A refusal with its remedy.
     *
     * @param message one line: what was entered, why it is refused and what to enter instead
     */
    public RefusedEntryException(String message) {
        super(message);
    }
}
