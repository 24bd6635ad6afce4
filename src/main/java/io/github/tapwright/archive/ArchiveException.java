package io.github.tapwright.archive;

/**
 * Trouble with an archive or a backup, in words for the maker: what is wrong and what can be done.
 */
public final class ArchiveException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /**
     * Trouble with its remedy.
     *
     * @param message one line: what is wrong and what can be done about it
     */
    public ArchiveException(String message) {
        super(message);
    }

    /**
     * Trouble with its remedy and the failure behind it.
     *
     * @param message one line: what is wrong and what can be done about it
     * @param cause the failure a developer would want to see
     */
    public ArchiveException(String message, Throwable cause) {
        super(message, cause);
    }
}
