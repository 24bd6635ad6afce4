package io.github.tapwright.level;

import io.github.tapwright.statistics.Estimate;

/**
 * The sound pressure behind the samples, from a recorded calibrator tone.
 *
 * <p>full-scale level = L_cal − 10 lg(A²/2), A the amplitude of the tone re full scale. It holds for one
 * microphone, one input and one setting of the gain. u: the calibrator's tolerance as a rectangular
 * distribution (tolerance/√3), and the scatter of the tone over its steady part. Source: [GUM], 4.3.7.
 *
 * @param fullScaleLevel dB SPL of a signal whose mean square is 1 re full scale
 * @param tone what the calibrator promised
 * @param toneFrequencyHz frequency found
 * @param fluctuationDb half the distance between the highest and lowest level of 0.1 s in the steady part
 * @param impurityPercent distortion and noise, root mean square against the tone's
 * @param steadySeconds how much of the recording was used
 * @param methodVersion version of the method
 */
public record Calibration(
        Estimate fullScaleLevel,
        CalibratorTone tone,
        double toneFrequencyHz,
        double fluctuationDb,
        double impurityPercent,
        double steadySeconds,
        String methodVersion)
        implements LevelReference, CalibrationResult {

    @Override
    public double fullScaleLevelDb() {
        return fullScaleLevel.value();
    }

    @Override
    public String unit() {
        return "dB re 20 µPa";
    }
}
