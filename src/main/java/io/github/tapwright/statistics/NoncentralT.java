package io.github.tapwright.statistics;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.special.Erf;
import org.hipparchus.special.Gamma;

/**
 * What Student's t does when there is something to find: T = (Z + δ)/(χ_ν/√ν).
 *
 * <p>P(T ≤ x) = ∫ Φ(xs − δ) g(s) ds over the density g of χ_ν/√ν, by Gauss's rule in pieces that follow the step of Φ.
 * Source of the definition: [JohnsonKotzBalakrishnan1995].
 */
final class NoncentralT {

    /** On −1 to 1. */
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(20);

    private static final int PIECES = 8;
    private static final double DEVIATIONS = 12;
    private static final double STEP = 8;

    private NoncentralT() {}

    /**
     * P(T ≤ x).
     *
     * @param x where
     * @param freedom ν, at least 1
     * @param shift δ
     * @return the probability, good to some 1e-10
     */
    static double cumulative(double x, double freedom, double shift) {
        double spread = DEVIATIONS / Math.sqrt(2 * freedom);
        double low = Math.max(0, 1 - spread);
        double high = 1 + spread;
        double logScale = Math.log(2) + freedom / 2 * Math.log(freedom / 2) - Gamma.logGamma(freedom / 2);
        UnivariateFunction integrand = s -> {
            double logDensity = logScale + (freedom - 1) * Math.log(s) - freedom * s * s / 2;
            return Math.exp(logDensity) * Erf.erfc((shift - x * s) / Math.sqrt(2)) / 2;
        };
        double step = x == 0 ? low : shift / x;
        double reach = x == 0 ? 0 : STEP / Math.abs(x);
        double from = Math.min(high, Math.max(low, step - reach));
        double to = Math.min(high, Math.max(low, step + reach));
        return Math.min(1, pieces(integrand, low, from) + pieces(integrand, from, to) + pieces(integrand, to, high));
    }

    private static double pieces(UnivariateFunction integrand, double from, double to) {
        double sum = 0;
        double width = (to - from) / PIECES;
        for (int i = 0; i < PIECES && width > 0; i++) {
            double middle = from + (i + 0.5) * width;
            sum += RULE.integrate(x -> integrand.value(middle + width / 2 * x)) * width / 2;
        }
        return sum;
    }
}
