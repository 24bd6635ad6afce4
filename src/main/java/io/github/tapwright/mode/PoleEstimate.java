package io.github.tapwright.mode;

import io.github.tapwright.statistics.Estimate;

/**
 * A pole and how sure it is; frequency, Q and decay time all follow from this one pole.
 *
 * <p>Of the spread within the fit and that from strike to strike the second is taken where it is larger than chance
 * would make it (1 % level); what models or starts disagree by is added to either.
 *
 * @param pole the pole
 * @param fromFit its covariance from what the fit leaves over
 * @param fromStrikes its covariance from the spread from strike to strike
 * @param fromModel what starts and models disagree by
 * @param strikes how many strikes
 * @param strikesAtMost so many times the fit's variance, chance lets (strikes − 1) times the strikes' be
 */
record PoleEstimate(
        Pole pole,
        Covariance fromFit,
        Covariance fromStrikes,
        Covariance fromModel,
        int strikes,
        double strikesAtMost) {

    /** Natural frequency √(ω²+σ²)/2π. */
    Estimate frequencyHz() {
        double size = Math.hypot(pole.omega(), pole.sigma());
        return of(pole.naturalHz(), pole.sigma() / size / (2 * Math.PI), pole.omega() / size / (2 * Math.PI));
    }

    /** Q = √(ω²+σ²)/(2σ). */
    Estimate q() {
        double size = Math.hypot(pole.omega(), pole.sigma());
        double bySigma = 1 / (2 * size) - size / (2 * pole.sigma() * pole.sigma());
        return of(pole.q(), bySigma, pole.omega() / (2 * pole.sigma() * size));
    }

    /** Time for 60 dB, ln(1000)/σ. */
    Estimate decayTimeSeconds() {
        double value = Math.log(1000) / pole.sigma();
        return of(value, -value / pole.sigma(), 0);
    }

    Estimate logSigma() {
        return of(Math.log(pole.sigma()), 1 / pole.sigma(), 0);
    }

    Estimate omega() {
        return of(pole.omega(), 0, 1);
    }

    private Estimate of(double value, double bySigma, double byOmega) {
        double fit = fromFit.variance(bySigma, byOmega);
        double spread = fromStrikes.variance(bySigma, byOmega);
        double model = fromModel.variance(bySigma, byOmega);
        if (strikes > 2 && (strikes - 1) * spread > strikesAtMost * fit) {
            return new Estimate(value, Math.sqrt(spread + model), strikes - 1.0);
        }
        return Estimate.of(value, Math.sqrt(fit + model));
    }
}
