package io.github.tapwright.recording;

/**
 * A recording that cannot be read, with a message written for the maker: what is wrong, and what to do.
 */
public final class UnreadableRecordingException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /**
     * A refusal with its reason.
     *
     * @param message one line: what is wrong with the recording and what can be done about it
     */
    public UnreadableRecordingException(String message) {
        super(message);
    }

    /**
     * A refusal with its reason and the failure behind it.
     *
     * @param message one line: what is wrong with the recording and what can be done about it
     * @param cause the failure a developer would want to see
     */
    public UnreadableRecordingException(String message, Throwable cause) {
        super(message, cause);
    }
}
