package io.github.tapwright.level.broadcast;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/** Which loudness is made equal where sounds are to be heard side by side. Source: [BS1770], [EBU3341]. */
public enum MatchedBy {
    /** The gated loudness of all that is played: for stretches of music or taps. */
    INTEGRATED("integrated", "integrated loudness"),
    /** The loudest 400 ms: for single notes, whose long decay would otherwise count as much as their beginning. */
    MOMENTARY_MAXIMUM("momentary-maximum", "greatest momentary loudness (400 ms)");

    private final String key;
    private final String words;

    MatchedBy(String key, String words) {
        this.key = key;
        this.words = words;
    }

    /**
     * Its name where it is kept.
     *
     * @return lower case
     */
    public String key() {
        return key;
    }

    /**
     * Its name for readers.
     *
     * @return a few words
     */
    public String words() {
        return words;
    }

    /**
     * Finds one by the name it is kept under.
     *
     * @param key such a name
     * @return empty if there is none
     */
    public static Optional<MatchedBy> ofKey(String key) {
        return Arrays.stream(values()).filter(m -> m.key.equals(key)).findFirst();
    }

    /**
     * This loudness of a measured programme.
     *
     * @param programme what was measured
     * @return LUFS; empty if it is shorter than 400 ms or silent
     */
    public OptionalDouble of(ProgrammeLoudness programme) {
        return this == INTEGRATED ? programme.integratedLufs() : programme.momentaryMaxLufs();
    }
}
