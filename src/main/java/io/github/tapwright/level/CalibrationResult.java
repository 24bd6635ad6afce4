package io.github.tapwright.level;

/**
 * What a recorded calibrator tone gives: a calibration, or the reason why not.
 */
public sealed interface CalibrationResult permits Calibration, CalibrationRefusal {}
