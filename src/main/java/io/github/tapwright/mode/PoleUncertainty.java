package io.github.tapwright.mode;

import io.github.tapwright.statistics.Estimate;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * How sure a fitted pole is.
 *
 * <p>From the fit: s²·(JᵀJ)⁻¹, with s² the variance of what is left over. From strike to strike: the
 * infinitesimal jackknife (JᵀJ)⁻¹·(Σ gₛgₛᵀ)·(JᵀJ)⁻¹·S/(S−1) with gₛ each strike's pull on the poles. The second
 * sees what the first cannot, such as a body that answers differently each time, but rests on S−1 degrees
 * of freedom; it is taken where it is larger than chance would make it (1 % level). Sources: [GUM],
 * [Jaeckel1972].
 */
final class PoleUncertainty {

    private static final double CHANCE = 0.99;

    private final Pole pole;
    private final double[][] fromFit;
    private final double[][] fromStrikes;
    private final int strikes;

    PoleUncertainty(PoleFit fit, int index) {
        this.pole = fit.poles().get(index);
        this.strikes = fit.window().strikes();
        PoleFit.Normal normal = fit.normal();
        DMatrixRMaj inverse = inverse(normal.curvature());
        DMatrixRMaj pulls = new DMatrixRMaj(inverse.numRows, strikes);
        CommonOps_DDRM.mult(inverse, normal.slopes(), pulls);
        fromFit = new double[2][2];
        fromStrikes = new double[2][2];
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 2; j++) {
                fromFit[i][j] = fit.noiseVariance() * inverse.get(2 * index + i, 2 * index + j);
                double sum = 0;
                for (int s = 0; s < strikes; s++) {
                    sum += pulls.get(2 * index + i, s) * pulls.get(2 * index + j, s);
                }
                fromStrikes[i][j] = strikes > 1 ? sum * strikes / (strikes - 1.0) : 0;
            }
        }
    }

    private static DMatrixRMaj inverse(DMatrixRMaj curvature) {
        int n = curvature.numRows;
        DMatrixRMaj damped = curvature.copy();
        for (int i = 0; i < n; i++) {
            damped.add(i, i, 1e-12 * curvature.get(i, i) + 1e-300);
        }
        DMatrixRMaj inverse = new DMatrixRMaj(n, n);
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.linear(n);
        if (!solver.setA(damped)) {
            CommonOps_DDRM.pinv(curvature, inverse);
            return inverse;
        }
        solver.invert(inverse);
        return inverse;
    }

    /** Natural frequency √(ω²+σ²)/2π. */
    Estimate frequencyHz() {
        double size = Math.hypot(pole.omega(), pole.sigma());
        return estimate(pole.naturalHz(), pole.sigma() / size / (2 * Math.PI), pole.omega() / size / (2 * Math.PI));
    }

    /** Q = √(ω²+σ²)/(2σ). */
    Estimate q() {
        double size = Math.hypot(pole.omega(), pole.sigma());
        double bySigma = 1 / (2 * size) - size / (2 * pole.sigma() * pole.sigma());
        return estimate(pole.q(), bySigma, pole.omega() / (2 * pole.sigma() * size));
    }

    /** Time for 60 dB, ln(1000)/σ. */
    Estimate decayTimeSeconds() {
        double value = Math.log(1000) / pole.sigma();
        return estimate(value, -value / pole.sigma(), 0);
    }

    private Estimate estimate(double value, double bySigma, double byOmega) {
        double fit = variance(fromFit, bySigma, byOmega);
        double spread = variance(fromStrikes, bySigma, byOmega);
        if (strikes > 2) {
            double limit = new ChiSquaredDistribution(strikes - 1.0).inverseCumulativeProbability(CHANCE);
            if ((strikes - 1) * spread > limit * fit) {
                return new Estimate(value, Math.sqrt(spread), strikes - 1.0);
            }
        }
        return Estimate.of(value, Math.sqrt(fit));
    }

    private static double variance(double[][] c, double bySigma, double byOmega) {
        return Math.max(0, bySigma * bySigma * c[0][0] + 2 * bySigma * byOmega * c[0][1] + byOmega * byOmega * c[1][1]);
    }
}
