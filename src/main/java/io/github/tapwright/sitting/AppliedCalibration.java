package io.github.tapwright.sitting;

import io.github.tapwright.level.Calibration;
import java.util.Optional;

/**
 * A calibration as it is applied to recordings, with all that is known about what it holds for.
 *
 * @param calibration what it says
 * @param toneFile the recorded tone as the maker named it
 * @param id its number in the archive; empty if it is not kept
 * @param takenAt when the tone was recorded; empty if unknown
 * @param input what it holds for
 */
public record AppliedCalibration(
        Calibration calibration,
        String toneFile,
        Optional<CalibrationId> id,
        Optional<Moment> takenAt,
        CalibratedInput input) {

    /**
     * A tone just read, about which nothing else is known.
     *
     * @param toneFile the recorded tone as the maker named it
     * @param calibration what it says
     * @return the calibration
     */
    public static AppliedCalibration of(String toneFile, Calibration calibration) {
        return new AppliedCalibration(
                calibration, toneFile, Optional.empty(), Optional.empty(), CalibratedInput.UNKNOWN);
    }

    /**
     * A calibration of the archive.
     *
     * @param kept the calibration
     * @return the same
     */
    public static AppliedCalibration of(KeptCalibration kept) {
        return new AppliedCalibration(
                kept.calibration(),
                kept.tone().fileName(),
                Optional.of(kept.id()),
                Optional.of(kept.takenAt()),
                kept.input());
    }
}
