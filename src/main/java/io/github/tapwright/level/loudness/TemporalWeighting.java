package io.github.tapwright.level.loudness;

/**
 * How total loudness builds up and lingers: 0.47 of a low pass of 3.5 ms and 0.53 of one of 70 ms.
 *
 * <p>Source: [ISO532-1], annex A.
 */
final class TemporalWeighting {

    private static final double FAST_SECONDS = 0.0035;
    private static final double SLOW_SECONDS = 0.07;
    private static final double FAST_WEIGHT = 0.47;

    private final double fastShare;
    private final double slowShare;
    private double fast;
    private double slow;

    TemporalWeighting(double stepSeconds) {
        this.fastShare = -Math.expm1(-stepSeconds / FAST_SECONDS);
        this.slowShare = -Math.expm1(-stepSeconds / SLOW_SECONDS);
    }

    /** One step: the weighted loudness for an unweighted one. */
    double step(double loudness) {
        fast += fastShare * (loudness - fast);
        slow += slowShare * (loudness - slow);
        return FAST_WEIGHT * fast + (1 - FAST_WEIGHT) * slow;
    }
}
