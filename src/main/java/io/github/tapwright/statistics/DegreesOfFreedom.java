package io.github.tapwright.statistics;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * How much is known about the uncertainty of a fixed effect.
 *
 * <p>Satterthwaite: ν = 2v²/(gᵀAg), v the effect's variance, g its gradient with respect to Λ and log σ, A twice the inverse of the
 * criterion's second derivatives; both by central differences; never more than {@link DesignFreedom}. Sources: [Giesbrecht1985],
 * [Kuznetsova2017].
 */
final class DegreesOfFreedom {

    private static final double STEP = 1e-3;
    private static final double FLAT = 1e-9;

    private final MixedData data;
    private final double[] at;
    private final double[] steps;
    private final EigenDecompositionSymmetric curvature;

    DegreesOfFreedom(MixedData data, double factor, double logSigma) {
        this.data = data;
        at = new double[] {factor, logSigma};
        steps = new double[] {STEP * Math.max(Math.abs(factor), 0.1), STEP};
        curvature = new EigenDecompositionSymmetric(secondDerivatives());
    }

    double of(int coefficient) {
        return Math.min(satterthwaite(data.contrast(coefficient)), DesignFreedom.of(data, coefficient));
    }

    /** Of the criterion, once for all coefficients. */
    private RealMatrix secondDerivatives() {
        RealMatrix second = new Array2DRowRealMatrix(at.length, at.length);
        for (int i = 0; i < at.length; i++) {
            for (int j = 0; j <= i; j++) {
                double both = (criterion(i, 1, j, 1)
                                - criterion(i, 1, j, -1)
                                - criterion(i, -1, j, 1)
                                + criterion(i, -1, j, -1))
                        / 4;
                second.setEntry(i, j, both);
                second.setEntry(j, i, both);
            }
        }
        return second;
    }

    /** Infinite where the criterion has no proper minimum, at a boundary. */
    private double satterthwaite(RealVector contrast) {
        int n = at.length;
        if (curvature.getEigenvalue(n - 1) <= FLAT * curvature.getEigenvalue(0)) {
            return Double.POSITIVE_INFINITY;
        }
        double[] gradient = new double[n];
        for (int i = 0; i < n; i++) {
            gradient[i] = (variance(contrast, i, 1) - variance(contrast, i, -1)) / 2;
        }
        double spread = 0;
        for (int k = 0; k < n; k++) {
            double along = 0;
            for (int i = 0; i < n; i++) {
                along += curvature.getEigenvector(k).getEntry(i) * gradient[i];
            }
            spread += 2 * along * along / curvature.getEigenvalue(k);
        }
        double variance = variance(contrast, 0, 0);
        return spread > 0 ? 2 * variance * variance / spread : Double.POSITIVE_INFINITY;
    }

    /** Steps are counted in units of each parameter's own, which the sums above then need not know. */
    private double criterion(int i, int stepsOfI, int j, int stepsOfJ) {
        double[] place = at.clone();
        place[i] += stepsOfI * steps[i];
        place[j] += stepsOfJ * steps[j];
        return new RemlProfile(data, place[0]).criterion(place[1]);
    }

    private double variance(RealVector contrast, int i, int stepsOfI) {
        double[] place = at.clone();
        place[i] += stepsOfI * steps[i];
        return Math.exp(2 * place[1]) * new RemlProfile(data, place[0]).variance(contrast);
    }
}
