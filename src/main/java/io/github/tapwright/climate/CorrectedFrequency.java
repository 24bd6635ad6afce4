package io.github.tapwright.climate;

/**
 * A frequency as it would have been in another climate.
 *
 * @param frequencyHz the corrected frequency
 * @param standardUncertaintyHz its u, with what the correction adds
 * @param degreesOfFreedom behind u, by Welch and Satterthwaite; infinite where every part is as good as known
 * @param correctionPercent what was added, in per cent of the measured frequency
 */
public record CorrectedFrequency(
        double frequencyHz, double standardUncertaintyHz, double degreesOfFreedom, double correctionPercent) {}
