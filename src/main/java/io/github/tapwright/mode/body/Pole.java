package io.github.tapwright.mode.body;

import org.hipparchus.complex.Complex;

/**
 * One way the body rings by itself: exp(s·t) with s = −σ + iω.
 *
 * @param decayRatePerSecond σ of the amplitude, 1/s, 0 for a body without losses
 * @param dampedFrequencyHz ω/2π, greater than 0
 */
public record Pole(double decayRatePerSecond, double dampedFrequencyHz) {

    private static final double LN_1000 = Math.log(1000);

    /**
     * The pole as a complex number.
     *
     * @return s, 1/s
     */
    public Complex s() {
        return new Complex(-decayRatePerSecond, 2 * Math.PI * dampedFrequencyHz);
    }

    /**
     * Undamped frequency |s|/2π.
     *
     * @return Hz
     */
    public double frequencyHz() {
        return s().norm() / (2 * Math.PI);
    }

    /**
     * Quality factor |s|/(2σ).
     *
     * @return infinite for a body without losses
     */
    public double q() {
        return s().norm() / (2 * decayRatePerSecond);
    }

    /**
     * Time for 60 dB of decay, ln(1000)/σ.
     *
     * @return s, infinite for a body without losses
     */
    public double decayTimeSeconds() {
        return LN_1000 / decayRatePerSecond;
    }
}
