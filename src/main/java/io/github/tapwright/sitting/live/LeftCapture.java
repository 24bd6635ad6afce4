package io.github.tapwright.sitting.live;

import java.nio.file.Path;
import java.util.List;

/**
 * A recording that nobody writes any more and that is part of no sitting.
 *
 * @param id its number
 * @param notes what was known about it
 * @param file where it lies
 * @param frames samples of each channel found on disk
 * @param finished whether it was ended in order; false after a crash
 * @param losses sound that was lost while it was made
 */
public record LeftCapture(
        CaptureId id, CaptureNotes notes, Path file, long frames, boolean finished, List<Loss> losses) {

    /** Keeps a copy of the list. */
    public LeftCapture {
        losses = List.copyOf(losses);
    }

    /**
     * How long it is.
     *
     * @return seconds
     */
    public double seconds() {
        return (double) frames / notes.format().rateHz();
    }
}
