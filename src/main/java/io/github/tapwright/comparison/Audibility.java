package io.github.tapwright.comparison;

/** Whether a difference is of a size that people notice. */
public enum Audibility {
    /** All of the interval lies below the threshold. */
    LIKELY_NOT("below what listeners notice"),
    /** The threshold lies within the interval. */
    CANNOT_TELL("perhaps at the limit of what listeners notice"),
    /** All of the interval lies above the threshold. */
    LIKELY("above what listeners notice");

    private final String words;

    Audibility(String words) {
        this.words = words;
    }

    /**
     * The judgement as people read it.
     *
     * @return words
     */
    public String words() {
        return words;
    }
}
