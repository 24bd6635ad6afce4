package io.github.tapwright.instrument;

import java.util.Optional;

/** What sort of guitar an instrument is. */
public enum InstrumentKind implements Keyed {
    /** Gut or nylon strings, built for the concert repertoire. */
    CLASSICAL("classical", "classical guitar"),
    /** Gut or nylon strings, lighter and lower set. */
    FLAMENCO("flamenco", "flamenco guitar"),
    /** Steel strings on a flat top. */
    STEEL_STRING("steel-string", "steel-string guitar"),
    /** Anything else that is plucked over a soundhole. */
    OTHER("other", "other instrument");

    private final String key;
    private final String words;

    InstrumentKind(String key, String words) {
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
     * Finds a kind by its key or its words.
     *
     * @param text key or words, any case
     * @return the value, or empty if none fits
     */
    public static Optional<InstrumentKind> find(String text) {
        return Keyed.find(values(), text);
    }
}
