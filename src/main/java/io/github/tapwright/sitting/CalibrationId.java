package io.github.tapwright.sitting;

/**
 * The number under which an archive keeps a calibration.
 *
 * @param number 1 or more, given by the archive and never used again
 */
public record CalibrationId(long number) {

    /** Refuses numbers no archive gives. */
    public CalibrationId {
        if (number < 1) {
            throw new IllegalArgumentException("calibrations are numbered from 1, was " + number);
        }
    }

    @Override
    public String toString() {
        return Long.toString(number);
    }
}
