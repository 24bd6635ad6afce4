package io.github.tapwright.sitting.listening;

/**
 * A blind listening's number in the archive.
 *
 * @param number from 1
 */
public record ListeningId(long number) {

    /** Refuses numbers no listening has. */
    public ListeningId {
        if (number < 1) {
            throw new IllegalArgumentException("listenings are numbered from 1, was " + number);
        }
    }

    @Override
    public String toString() {
        return Long.toString(number);
    }
}
