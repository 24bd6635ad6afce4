package io.github.tapwright.instrument;

import java.util.Optional;

/** How the top is built up through its thickness. */
public enum ConstructionKind implements Keyed {
    /** One layer of wood. */
    SOLID("solid", "solid"),
    /** Two skins of wood on a honeycomb of paper, aramid or the like. */
    HONEYCOMB_SANDWICH("honeycomb-sandwich", "honeycomb-core sandwich"),
    /** Two skins of wood on a core of light wood. */
    WOOD_SANDWICH("wood-sandwich", "wood-core sandwich"),
    /** Built some other way; the notes say how. */
    OTHER("other", "other construction");

    private final String key;
    private final String words;

    ConstructionKind(String key, String words) {
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
     * Finds a construction by its key or its words.
     *
     * @param text key or words, any case
     * @return the value, or empty if none fits
     */
    public static Optional<ConstructionKind> find(String text) {
        return Keyed.find(values(), text);
    }
}
