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

    /** Gives two the next samples, in one walk: the two sums do not depend on each other, so the processor works on both at once. */
    static void takeBoth(TimeWeightedMaximum one, TimeWeightedMaximum other, double[] samples, int count) {
        double y = one.smoothed;
        double z = other.smoothed;
        double top = one.largest;
        double otherTop = other.largest;
        double share = one.share;
        double otherShare = other.share;
        for (int n = 0; n < count; n++) {
            double square = samples[n] * samples[n];
            y += share * (square - y);
            z += otherShare * (square - z);
            if (y > top) {
                top = y;
            }
            if (z > otherTop) {
                otherTop = z;
            }
        }
        one.smoothed = y;
        one.largest = top;
        other.smoothed = z;
        other.largest = otherTop;
    }

    double meanSquare() {
        return largest;
    }
}
