package io.github.tapwright.mode;

/**
 * Covariance of a pole's decay rate σ and angular frequency ω.
 *
 * @param sigmaSigma variance of σ, 1/s²
 * @param sigmaOmega covariance of σ and ω
 * @param omegaOmega variance of ω, (rad/s)²
 */
record Covariance(double sigmaSigma, double sigmaOmega, double omegaOmega) {

    static final Covariance ZERO = new Covariance(0, 0, 0);

    /** What a step away from a mean adds: its outer product. */
    static Covariance ofStep(double bySigma, double byOmega) {
        return new Covariance(bySigma * bySigma, bySigma * byOmega, byOmega * byOmega);
    }

    Covariance plus(Covariance other, double times) {
        return new Covariance(
                sigmaSigma + times * other.sigmaSigma,
                sigmaOmega + times * other.sigmaOmega,
                omegaOmega + times * other.omegaOmega);
    }

    /** Variance of a quantity with these slopes by σ and by ω. */
    double variance(double bySigma, double byOmega) {
        return Math.max(
                0,
                bySigma * bySigma * sigmaSigma + 2 * bySigma * byOmega * sigmaOmega + byOmega * byOmega * omegaOmega);
    }
}
