package io.github.tapwright.desktop.reports;

/** What a report can be about. */
public enum About {
    /** One sitting. */
    SITTING("one sitting"),
    /** A sitting and an earlier one. */
    TWO("one sitting, set against another"),
    /** An instrument over time. */
    HISTORY("an instrument over time"),
    /** Groups of instruments. */
    GROUPS("groups of instruments");

    private final String words;

    About(String words) {
        this.words = words;
    }

    /**
     * How it reads.
     *
     * @return in words
     */
    public String words() {
        return words;
    }
}
