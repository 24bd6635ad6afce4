package io.github.tapwright.cli;

import java.util.Optional;
import java.util.function.Function;

/**
 * What was said about something that may be unknown: nothing at all, what it is, or that nobody knows it.
 *
 * @param isSaid whether it was spoken of
 * @param value what it is; empty if it is unknown or was not spoken of
 */
record Said<T>(boolean isSaid, Optional<T> value) {

    /** What takes back what was written down, here and in what is printed. */
    static final String UNKNOWN = "unknown";

    /** Nothing was said. */
    static <T> Said<T> nothing() {
        return new Said<>(false, Optional.empty());
    }

    /** Reads "unknown", an empty text, which means the same, or a value. */
    static <T> Said<T> read(String text, Function<String, T> reading) {
        return new Said<>(true, isUnknown(text) ? Optional.empty() : Optional.of(reading.apply(text)));
    }

    static boolean isUnknown(String text) {
        return text.isBlank() || text.strip().equalsIgnoreCase(UNKNOWN);
    }

    /** What holds now: what was said, else what was known before. */
    Optional<T> over(Optional<T> before) {
        return isSaid ? value : before;
    }
}
