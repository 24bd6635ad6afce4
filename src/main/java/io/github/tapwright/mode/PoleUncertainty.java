package io.github.tapwright.mode;

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
 * of freedom. Sources: [GUM], [Jaeckel1972].
 */
final class PoleUncertainty {

    private static final double CHANCE = 0.99;

    private PoleUncertainty() {}

    /** A fit's pole with its covariances, nothing yet of starts and models. */
    static PoleEstimate of(PoleFit fit, int index) {
        int strikes = fit.window().strikes();
        PoleFit.Normal normal = fit.normal();
        DMatrixRMaj inverse = inverse(normal.curvature());
        DMatrixRMaj pulls = new DMatrixRMaj(inverse.numRows, strikes);
        CommonOps_DDRM.mult(inverse, normal.slopes(), pulls);
        int sigma = 2 * index;
        int omega = sigma + 1;
        Covariance pulled = Covariance.ZERO;
        for (int s = 0; s < strikes && strikes > 1; s++) {
            pulled =
                    pulled.plus(Covariance.ofStep(pulls.get(sigma, s), pulls.get(omega, s)), strikes / (strikes - 1.0));
        }
        Covariance shape =
                new Covariance(inverse.get(sigma, sigma), inverse.get(sigma, omega), inverse.get(omega, omega));
        return new PoleEstimate(
                fit.poles().get(index),
                Covariance.ZERO.plus(shape, fit.noiseVariance()),
                pulled,
                Covariance.ZERO,
                strikes,
                strikes > 2
                        ? new ChiSquaredDistribution(strikes - 1.0).inverseCumulativeProbability(CHANCE)
                        : Double.POSITIVE_INFINITY);
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
}
