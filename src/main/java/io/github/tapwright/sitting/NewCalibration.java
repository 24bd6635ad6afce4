package io.github.tapwright.sitting;

import java.time.Instant;

/**
 * A calibration about to be kept.
 *
 * @param takenAt when the tone was recorded
 * @param addedAt when it is added
 * @param input what it holds for
 * @param staged the safe copy of the tone
 * @param tone what was found in that copy
 */
public record NewCalibration(
        Moment takenAt,
        Instant addedAt,
        CalibratedInput input,
        StagedOriginal staged,
        CheckCalibration.CheckedTone tone) {}
