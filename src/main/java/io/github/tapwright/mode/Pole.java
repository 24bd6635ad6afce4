package io.github.tapwright.mode;

/**
 * One decaying sine's frequency and decay rate: s = −σ ± iω.
 *
 * @param omega ω, damped angular frequency, rad/s, greater than 0
 * @param sigma σ, decay rate of the amplitude, 1/s; 0 for a steady tone
 */
record Pole(double omega, double sigma) {

    double dampedHz() {
        return omega / (2 * Math.PI);
    }

    double naturalHz() {
        return Math.hypot(omega, sigma) / (2 * Math.PI);
    }

    double q() {
        return Math.hypot(omega, sigma) / (2 * sigma);
    }

    /** Half-power width of its line, Hz. */
    double widthHz() {
        return sigma / Math.PI;
    }
}
