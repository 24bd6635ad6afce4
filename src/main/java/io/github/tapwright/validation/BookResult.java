package io.github.tapwright.validation;

import java.util.List;

/**
 * What came of a whole book.
 *
 * @param chapters in the order of the page
 */
public record BookResult(List<Chapter> chapters) {

    /** Keeps a copy of the list. */
    public BookResult {
        chapters = List.copyOf(chapters);
    }

    /**
     * How many checks there are.
     *
     * @return over all chapters
     */
    public int checks() {
        return chapters.stream().mapToInt(c -> c.outcomes().size()).sum();
    }

    /**
     * How many lie within their tolerance.
     *
     * @return over all chapters
     */
    public int within() {
        return chapters.stream().mapToInt(Chapter::within).sum();
    }

    /**
     * The verdict on the program.
     *
     * @return true if there are checks and all lie within their tolerance
     */
    public boolean isSound() {
        return checks() > 0 && within() == checks();
    }

    /**
     * The verdict in words.
     *
     * @return such as "212 of 212 within tolerance"
     */
    public String words() {
        return within() + " of " + checks() + " within tolerance";
    }
}
