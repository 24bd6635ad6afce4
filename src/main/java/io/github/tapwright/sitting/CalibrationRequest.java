package io.github.tapwright.sitting;

import io.github.tapwright.level.CalibratorTone;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A calibrator tone a maker wants to keep.
 *
 * @param file the recorded tone
 * @param tone what the calibrator promises
 * @param takenAt when the tone was recorded; empty means now
 * @param input what it holds for
 */
public record CalibrationRequest(Path file, CalibratorTone tone, Optional<Moment> takenAt, CalibratedInput input) {}
