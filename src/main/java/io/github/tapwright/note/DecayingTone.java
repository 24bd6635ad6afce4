package io.github.tapwright.note;

/**
 * One decaying sine: s = −σ ± iω.
 *
 * @param omega ω, angular frequency, rad/s, greater than 0
 * @param sigma σ, decay rate of the amplitude, 1/s
 */
record DecayingTone(double omega, double sigma) {

    /** Natural logarithm of the amplitude ratio that 60 dB are. */
    static final double SIXTY_DB = Math.log(1000);

    static DecayingTone of(double hz, double sigma) {
        return new DecayingTone(2 * Math.PI * hz, sigma);
    }

    double hz() {
        return omega / (2 * Math.PI);
    }

    /** Half-power width of its line, Hz. */
    double widthHz() {
        return sigma / Math.PI;
    }
}
