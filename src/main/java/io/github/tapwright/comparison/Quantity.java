package io.github.tapwright.comparison;

/** What is compared of a resonance or a note. */
public enum Quantity {
    /** Frequency or pitch. */
    FREQUENCY("frequency", "Hz"),
    /** Q, and with it the decay time. */
    Q("Q", ""),
    /** How long it rings. */
    DECAY_TIME("decay time", "s"),
    /** How loud it is. */
    LEVEL("level", "dB");

    private final String words;
    private final String unit;

    Quantity(String words, String unit) {
        this.words = words;
        this.unit = unit;
    }

    /**
     * The quantity as people read it.
     *
     * @return words
     */
    public String words() {
        return words;
    }

    /**
     * Its unit.
     *
     * @return empty for a pure number
     */
    public String unit() {
        return unit;
    }
}
