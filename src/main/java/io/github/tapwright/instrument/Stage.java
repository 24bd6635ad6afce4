package io.github.tapwright.instrument;

import java.util.Optional;

/** How far an instrument had come when it was measured. */
public enum Stage implements Keyed {
    /** Closed box, no finish yet. */
    IN_THE_WHITE("in-the-white", "in the white"),
    /** Sanded and sealed, ready for its finish. */
    BEFORE_FINISH("before-finish", "before finish"),
    /** Finish on, no strings yet. */
    FINISHED("finished", "finished"),
    /** Bridge, nut and strings on for the first time. */
    STRUNG("strung", "strung"),
    /** Any time after it was first strung and left the bench. */
    LATER("later", "later");

    private final String key;
    private final String words;

    Stage(String key, String words) {
        this.key = key;
        this.words = words;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String words() {
        return words;
    }

    /**
     * Finds a stage by its key or its words.
     *
     * @param text key or words, any case
     * @return the value, or empty if none fits
     */
    public static Optional<Stage> find(String text) {
        return Keyed.find(values(), text);
    }
}
