package io.github.tapwright.sitting.listening;

/**
 * One question: is X the sound called A or the sound called B?
 *
 * @param a which sound is called A, its place in the session's list from 0
 * @param b which sound is called B
 * @param xIsA whether X is A, or else B
 */
public record ListeningTrial(int a, int b, boolean xIsA) {

    /** Refuses a question without a difference. */
    public ListeningTrial {
        if (a < 0 || b < 0 || a == b) {
            throw new IllegalArgumentException("no pair of sounds: " + a + " and " + b);
        }
    }

    /**
     * Which sound X is.
     *
     * @return its place in the session's list, from 0
     */
    public int x() {
        return xIsA ? a : b;
    }
}
