package io.github.tapwright.sitting.live;

/**
 * The number under which an archive keeps a recording that is not part of a sitting yet.
 *
 * @param number 1 or more, given by the archive and never used again
 */
public record CaptureId(long number) {

    /** Refuses numbers no archive gives. */
    public CaptureId {
        if (number < 1) {
            throw new IllegalArgumentException("recordings are numbered from 1, was " + number);
        }
    }

    @Override
    public String toString() {
        return Long.toString(number);
    }
}
