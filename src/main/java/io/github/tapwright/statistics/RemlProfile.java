package io.github.tapwright.statistics;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Fit and restricted likelihood for given relative variances of the groups.
 *
 * <p>The covariance of a group is σ²W, W = I + ZΛΛᵀZᵀ, Λ lower triangular. With M = I + ΛᵀZᵀZΛ: log|W| = log|M| and
 * W⁻¹ = I − ZΛM⁻¹ΛᵀZᵀ. Source: [Bates2015], 3.
 */
final class RemlProfile {

    private static final double SYMMETRY = 1e-9;
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
     * @param factor Λ: its one entry, or its entries (1,1), (2,1), (2,2)
     */
    RemlProfile(MixedData data, double... factor) {
        RealMatrix lambda = lambda(factor);
        RealMatrix transposed = lambda.transpose();
        RealMatrix identity = MatrixUtils.createRealIdentityMatrix(lambda.getRowDimension());
        int p = data.coefficients;
        RealMatrix information = new Array2DRowRealMatrix(p, p);
        RealVector right = new ArrayRealVector(p);
        double ownSquares = 0;
        double logs = 0;
        for (int g = 0; g < data.groups(); g++) {
            MixedData.Products own = data.products.get(g);
            RealMatrix m = identity.add(transposed.multiply(own.zz()).multiply(lambda));
            CholeskyDecomposition cholesky = new CholeskyDecomposition(m, SYMMETRY, 0);
            DecompositionSolver solver = cholesky.getSolver();
            RealMatrix zx = transposed.multiply(own.zx());
            RealVector zy = transposed.operate(own.zy());
            RealVector solved = solver.solve(zy);
            information = information.add(own.xx()).subtract(zx.transposeMultiply(solver.solve(zx)));
            right = right.add(own.xy()).subtract(zx.preMultiply(solved));
            ownSquares += own.yy() - zy.dotProduct(solved);
            logs += Math.log(cholesky.getDeterminant());
        }
        covariance = inverse(information);
        coefficients = covariance.operate(right);
        squares = Math.max(FLOOR * data.squares(), ownSquares - coefficients.dotProduct(right));
        freedom = data.observations - p;
        logDeterminants = logs - logDeterminant(covariance);
    }

    private static RealMatrix lambda(double... factor) {
        return factor.length == 1
                ? new Array2DRowRealMatrix(new double[][] {{factor[0]}})
                : new Array2DRowRealMatrix(new double[][] {{factor[0], 0}, {factor[1], factor[2]}});
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
