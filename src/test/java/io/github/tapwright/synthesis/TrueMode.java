package io.github.tapwright.synthesis;

import org.hipparchus.complex.Complex;

/**
 * One decaying mode as it truly is: impulse response a·cos(ω_d·t + φ)·exp(−σ·t) for t ≥ 0.
 *
 * @param frequencyHz undamped frequency |s|/2π, greater than 0
 * @param q quality factor |s|/(2σ), greater than 1/2
 * @param amplitude a, response to a contact of unit impulse and no duration
 * @param phaseRadians φ; −π/2 gives the displacement of a plain resonator
 */
public record TrueMode(double frequencyHz, double q, double amplitude, double phaseRadians) {

    private static final double LN_1000 = Math.log(1000);

    /**
     * A plain resonator: response a·sin(ω_d·t)·exp(−σ·t).
     *
     * @param frequencyHz undamped frequency
     * @param q quality factor
     * @param amplitude a
     */
    public static TrueMode resonator(double frequencyHz, double q, double amplitude) {
        return new TrueMode(frequencyHz, q, amplitude, -Math.PI / 2);
    }

    /** Decay rate σ = π·f/Q, 1/s. */
    public double decayRatePerSecond() {
        return Math.PI * frequencyHz / q;
    }

    /** Damped frequency, f·sqrt(1 − 1/(4Q²)). */
    public double dampedFrequencyHz() {
        return frequencyHz * Math.sqrt(1 - 1 / (4 * q * q));
    }

    /** Time for 60 dB of decay, ln(1000)/σ. */
    public double decayTimeSeconds() {
        return LN_1000 / decayRatePerSecond();
    }

    /** The pole of the upper half plane, s = −σ + i·ω_d. */
    public Complex pole() {
        return new Complex(-decayRatePerSecond(), 2 * Math.PI * dampedFrequencyHz());
    }

    /** The complex amplitude a·exp(iφ). */
    public Complex residue() {
        return new Complex(amplitude * Math.cos(phaseRadians), amplitude * Math.sin(phaseRadians));
    }
}
