package io.github.tapwright.sitting;

import io.github.tapwright.level.Calibration;
import java.time.Instant;
import java.util.Optional;

/**
 * A calibration an archive keeps.
 *
 * @param id its number in the archive
 * @param takenAt when the tone was recorded
 * @param addedAt when it was added
 * @param input what it holds for
 * @param tone the recorded tone, bit for bit
 * @param calibration what it says
 * @param withdrawn why it is used for nothing new; empty if it is in use
 */
public record KeptCalibration(
        CalibrationId id,
        Moment takenAt,
        Instant addedAt,
        CalibratedInput input,
        KeptRecording tone,
        Calibration calibration,
        Optional<OutOfUse> withdrawn) {}
