package io.github.tapwright.synthesis;

import org.hipparchus.complex.Complex;

/**
 * A contact whose force is half a sine, with the exact answer of a decaying mode to it.
 *
 * <p>Force F(t) = (p/2)·sin(p·t) for 0 ≤ t ≤ T, with p = π/T, so its impulse is 1. A mode exp(s·t) answers
 * (p/2)·[p·exp(s·t) − s·sin(p·t) − p·cos(p·t)]/(s² + p²) during the contact and
 * exp(s·t)·(p²/2)·[1 + exp(−s·T)]/(s² + p²) after it. Source: derived, exact (the convolution integral done by
 * hand).
 *
 * @param durationSeconds T, greater than 0
 */
public record HalfSineContact(double durationSeconds) {

    private double p() {
        return Math.PI / durationSeconds;
    }

    /**
     * The force at a time after the onset, 1/s.
     *
     * @param seconds since the contact began
     */
    public double force(double seconds) {
        return seconds < 0 || seconds > durationSeconds ? 0 : p() / 2 * Math.sin(p() * seconds);
    }

    /**
     * What multiplies exp(s·t) after the contact is over, t counted from its onset.
     *
     * @param pole s, with s² + p² not zero
     */
    public Complex freeAmplitude(Complex pole) {
        double p = p();
        return pole.multiply(-durationSeconds)
                .exp()
                .add(1)
                .multiply(p * p / 2)
                .divide(pole.multiply(pole).add(p * p));
    }

    /**
     * The answer of the mode exp(s·t).
     *
     * @param pole s
     * @param seconds since the contact began
     */
    public Complex response(Complex pole, double seconds) {
        if (seconds <= 0) {
            return Complex.ZERO;
        }
        Complex ringing = pole.multiply(seconds).exp();
        if (seconds >= durationSeconds) {
            return ringing.multiply(freeAmplitude(pole));
        }
        double p = p();
        return ringing.multiply(p)
                .subtract(pole.multiply(Math.sin(p * seconds)))
                .subtract(p * Math.cos(p * seconds))
                .multiply(p / 2)
                .divide(pole.multiply(pole).add(p * p));
    }
}
