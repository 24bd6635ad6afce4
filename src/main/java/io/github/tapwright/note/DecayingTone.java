package io.github.tapwright.note;

import io.github.tapwright.signal.LineShape;

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

    /** Its cosine, its sine, and both differentiated by σ, over the bins of a shape; see {@link LineShape#fill}. */
    double[][] columns(LineShape shape) {
        double[][] columns = new double[4][2 * shape.bins()];
        shape.fill(omega, sigma, columns);
        return columns;
    }
}
