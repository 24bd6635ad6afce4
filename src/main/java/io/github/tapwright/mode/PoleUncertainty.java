package io.github.tapwright.mode;

import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * How sure the poles of a fit are.
 *
 * <p>From the fit: s²·(JᵀJ)⁻¹, with s² the variance of what is left over. From strike to strike: the
 * infinitesimal jackknife (JᵀJ)⁻¹·(Σ gₛgₛᵀ)·(JᵀJ)⁻¹·S/(S−1) with gₛ each strike's pull on the poles. The second
 * sees what the first cannot, such as a body that answers differently each time, but rests on S−1 degrees
 * of freedom. Sources: [GUM], [Jaeckel1972].
 */
final class PoleUncertainty {

    private static final double CHANCE = 0.99;

    private PoleUncertainty() {}

    /** A fit's poles, in its order, with their covariances, nothing yet of starts and models. */
    static List<PoleEstimate> of(PoleFit fit) {
        if (fit.poles().isEmpty()) {
            return List.of();
        }
        int strikes = fit.window().strikes();
        PoleFit.Normal normal = fit.normal();
        DMatrixRMaj inverse = inverse(normal.curvature());
        DMatrixRMaj pulls = new DMatrixRMaj(inverse.numRows, strikes);
        CommonOps_DDRM.mult(inverse, normal.slopes(), pulls);
        double strikesAtMost = strikes > 2
                ? new ChiSquaredDistribution(strikes - 1.0).inverseCumulativeProbability(CHANCE)
                : Double.POSITIVE_INFINITY;
        List<PoleEstimate> estimates = new ArrayList<>();
        for (int p = 0; p < fit.poles().size(); p++) {
            Covariance shape = new Covariance(
                    inverse.get(2 * p, 2 * p), inverse.get(2 * p, 2 * p + 1), inverse.get(2 * p + 1, 2 * p + 1));
            estimates.add(new PoleEstimate(
                    fit.poles().get(p),
                    Covariance.ZERO.plus(shape, fit.noiseVariance()),
                    fromStrikes(pulls, p),
                    Covariance.ZERO,
                    strikes,
                    strikesAtMost));
        }
        return estimates;
    }

    private static Covariance fromStrikes(DMatrixRMaj pulls, int pole) {
        int strikes = pulls.numCols;
        Covariance pulled = Covariance.ZERO;
        for (int s = 0; s < strikes && strikes > 1; s++) {
            Covariance step = Covariance.ofStep(pulls.get(2 * pole, s), pulls.get(2 * pole + 1, s));
            pulled = pulled.plus(step, strikes / (strikes - 1.0));
        }
        return pulled;
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
