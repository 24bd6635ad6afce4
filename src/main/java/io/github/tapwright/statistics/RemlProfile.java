package io.github.tapwright.statistics;

import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Fit and restricted likelihood for given relative variances of the groups.
 *
 * <p>The covariance of a group is σ²W, W = I + Λ²zzᵀ, z a column of ones; {@link WeightedSums} does without its inverse.
 * Source: [Bates2015], 3.
 */
final class RemlProfile {

    private static final double SINGULAR = 1e-11;
    /** Of the values' own squares; keeps the logarithm finite where a fit is perfect. */
    private static final double FLOOR = 1e-24;

    /** XᵀW⁻¹X, inverted. */
    final RealMatrix covariance;

    final RealVector coefficients;
    /** Weighted sum of squares left over. */
    final double squares;

    private final double logDeterminants;
    private final int freedom;

    /**
     * Fits.
     *
     * @param data the study
     * @param factor Λ, the standard deviation between groups relative to σ
     */
    RemlProfile(MixedData data, double factor) {
        WeightedSums sums = WeightedSums.of(data, factor);
        covariance = inverse(sums.information());
        coefficients = covariance.operate(sums.right());
        squares = Math.max(FLOOR * data.squares(), sums.squares() - coefficients.dotProduct(sums.right()));
        freedom = data.observations - data.coefficients;
        logDeterminants = sums.logDeterminants() - logDeterminant(covariance);
    }

    private static RealMatrix inverse(RealMatrix information) {
        RealMatrix scaled = information.copy();
        int p = information.getRowDimension();
        double[] scale = new double[p];
        for (int i = 0; i < p; i++) {
            scale[i] = Math.sqrt(information.getEntry(i, i));
        }
        rescale(scaled, scale);
        DecompositionSolver solver = new QRDecomposition(scaled, SINGULAR).getSolver();
        if (!solver.isNonSingular()) {
            throw new IllegalArgumentException(
                    "the predictors cannot be told apart: one of them is constant or follows from the others");
        }
        RealMatrix inverse = solver.getInverse();
        rescale(inverse, scale);
        return inverse;
    }

    private static void rescale(RealMatrix matrix, double[] scale) {
        for (int i = 0; i < scale.length; i++) {
            for (int j = 0; j < scale.length; j++) {
                matrix.setEntry(i, j, scale[i] > 0 && scale[j] > 0 ? matrix.getEntry(i, j) / (scale[i] * scale[j]) : 0);
            }
        }
    }

    private static double logDeterminant(RealMatrix symmetric) {
        RealMatrix r = new QRDecomposition(symmetric).getR();
        double sum = 0;
        for (int i = 0; i < r.getRowDimension(); i++) {
            sum += Math.log(Math.abs(r.getEntry(i, i)));
        }
        return sum;
    }

    double residualVariance() {
        return squares / freedom;
    }

    /** −2 log restricted likelihood at the best σ. */
    double criterion() {
        return criterion(Math.log(residualVariance()) / 2);
    }

    /** The same at any σ. */
    double criterion(double logSigma) {
        return logDeterminants + freedom * (Math.log(2 * Math.PI) + 2 * logSigma) + squares / Math.exp(2 * logSigma);
    }

    double variance(RealVector contrast) {
        return contrast.dotProduct(covariance.operate(contrast));
    }
}
