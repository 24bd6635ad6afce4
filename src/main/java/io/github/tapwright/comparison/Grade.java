package io.github.tapwright.comparison;

/** What a difference in conditions does to a comparison, from harmless to fatal. */
public enum Grade {
    /** It does not matter for this quantity. */
    FINE("fine"),
    /** It matters, its size is known, and it was taken out. */
    CORRECTED("corrected for"),
    /** It may matter; the figures are shown with this warning. */
    DOUBTFUL("shown with this warning"),
    /** What would be compared are two different things. */
    REFUSED("refused");

    private final String words;

    Grade(String words) {
        this.words = words;
    }

    /**
     * The grade as people read it.
     *
     * @return lower-case words
     */
    public String words() {
        return words;
    }

    /**
     * The worse of two.
     *
     * @param other another
     * @return this or the other
     */
    public Grade or(Grade other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
