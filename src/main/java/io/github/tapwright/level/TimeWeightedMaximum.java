package io.github.tapwright.level;

import io.github.tapwright.recording.SampleRate;

/**
 * The largest time-weighted mean square of a signal.
 *
 * <p>y[n] = y[n−1] + (1 − exp(−1/(τ·rate)))·(x[n]² − y[n−1]), at rest before the first sample. Source:
 * [IEC61672-1], time-weighted sound level.
 */
final class TimeWeightedMaximum {

    private final double share;
    private double smoothed;
    private double largest;

    TimeWeightedMaximum(TimeWeighting weighting, SampleRate rate) {
        this.share = -Math.expm1(-1 / (weighting.timeConstantSeconds() * rate.hertz()));
    }

    void take(double[] samples, int count) {
        double y = smoothed;
        double top = largest;
        for (int n = 0; n < count; n++) {
            y += share * (samples[n] * samples[n] - y);
            if (y > top) {
                top = y;
            }
        }
        smoothed = y;
        largest = top;
    }

    double meanSquare() {
        return largest;
    }
}
