package io.github.tapwright.instrument;

import java.util.Arrays;
import java.util.Optional;

/** A value with a key for files and the command line, and words for people. */
public interface Keyed {

    /**
     * The key kept in the archive and typed on the command line.
     *
     * @return stable, lower case
     */
    String key();

    /**
     * The value as people read it.
     *
     * @return lower-case words
     */
    String words();

    /**
     * Finds a value by its key or its words.
     *
     * @param <T> the kind of value
     * @param all the values to choose from
     * @param text key or words, any case
     * @return the value, or empty if none fits
     */
    static <T extends Keyed> Optional<T> find(T[] all, String text) {
        return Arrays.stream(all)
                .filter(v -> v.key().equalsIgnoreCase(text) || v.words().equalsIgnoreCase(text))
                .findFirst();
    }
}
