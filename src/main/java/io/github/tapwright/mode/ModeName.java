package io.github.tapwright.mode;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The body's named resonances, by the literature's terms.
 *
 * <p>Authors do not agree on index notation such as (0,1) or (1,2), so the key kept in files describes the
 * motion and is neutral; the words are for people.
 */
public enum ModeName {
    /** Air in the soundhole moving against the top: the lowest resonance of box and air. */
    MAIN_AIR("air-1", "main air"),
    /** The top moving as one, with the air. */
    MAIN_TOP("top-monopole", "main top"),
    /** The back moving as one. */
    MAIN_BACK("back-monopole", "main back"),
    /** The two halves of the lower bout moving against each other. */
    CROSS_DIPOLE("top-cross-dipole", "cross dipole"),
    /** Upper and lower part of the top moving against each other. */
    LONG_DIPOLE("top-long-dipole", "long dipole");

    private static final Map<String, ModeName> BY_TEXT = Arrays.stream(values())
            .flatMap(n -> Stream.of(Map.entry(n.key, n), Map.entry(n.words, n)))
            .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));

    private final String key;
    private final String words;

    ModeName(String key, String words) {
        this.key = key;
        this.words = words;
    }

    /**
     * The neutral key kept in files.
     *
     * @return stable, lower case
     */
    public String key() {
        return key;
    }

    /**
     * The name as people read it.
     *
     * @return lower-case words
     */
    public String words() {
        return words;
    }

    /**
     * Finds a name by its key or its words.
     *
     * @param text key or words, any case
     * @return the name, or empty if none fits
     */
    public static Optional<ModeName> find(String text) {
        return Optional.ofNullable(BY_TEXT.get(text.toLowerCase(Locale.ROOT)));
    }
}
