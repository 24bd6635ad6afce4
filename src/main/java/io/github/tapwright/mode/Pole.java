package io.github.tapwright.mode;

/**
 * One decaying sine's frequency and decay rate: s = −σ ± iω.
 *
 * @param omega ω, damped angular frequency, rad/s, greater than 0
 * @param sigma σ, decay rate of the amplitude, 1/s; 0 for a steady tone
 */
record Pole(double omega, double sigma) {

    private static final double TWIN_WIDTHS = 0.25;

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

    /**
     * Whether two poles lie so near each other, within a quarter of their mean width, that they describe one
     * resonance.
     */
    boolean isTwinOf(Pole other) {
        return Math.abs(dampedHz() - other.dampedHz()) < TWIN_WIDTHS * 0.5 * (widthHz() + other.widthHz());
    }
}
