package io.github.tapwright.level;

/**
 * The exponential time weightings of sound level meters.
 *
 * <p>The square of the signal is smoothed by exp(−t/τ)/τ. Source: [IEC61672-1].
 */
public enum TimeWeighting {
    /** F, τ = 125 ms. */
    FAST(0.125),
    /** S, τ = 1 s. */
    SLOW(1);

    private final double timeConstantSeconds;

    TimeWeighting(double timeConstantSeconds) {
        this.timeConstantSeconds = timeConstantSeconds;
    }

    /**
     * The time constant.
     *
     * @return τ, s
     */
    public double timeConstantSeconds() {
        return timeConstantSeconds;
    }
}
