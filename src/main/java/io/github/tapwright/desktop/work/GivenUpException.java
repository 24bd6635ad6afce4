package io.github.tapwright.desktop.work;

/** Ends a job the maker gave up. */
public final class GivenUpException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Given up. */
    public GivenUpException() {
        super("given up");
    }
}
