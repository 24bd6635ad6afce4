package io.github.tapwright.instrument;

import java.util.Optional;

/** What the strings did during the taps; free strings take energy from the body and change its decay. */
public enum StringState implements Keyed {
    /** No strings on. */
    OFF("off", "strings off"),
    /** Strings on and held still by felt, foam or card. */
    DAMPED("damped", "strings damped"),
    /** Strings on and free to ring. */
    FREE("free", "strings free");

    private final String key;
    private final String words;

    StringState(String key, String words) {
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
     * Finds a state by its key or its words.
     *
     * @param text key or words, any case
     * @return the value, or empty if none fits
     */
    public static Optional<StringState> find(String text) {
        return Keyed.find(values(), text);
    }
}
