package io.github.tapwright.statistics;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * What a fit needs of all groups together, each weighted with W⁻¹ = I − ZΛM⁻¹ΛᵀZᵀ, M = I + ΛᵀZᵀZΛ.
 *
 * @param information XᵀW⁻¹X
 * @param right XᵀW⁻¹y
 * @param squares yᵀW⁻¹y
 * @param logDeterminants of all W together
 */
record WeightedSums(RealMatrix information, RealVector right, double squares, double logDeterminants) {

    private static final double SYMMETRY = 1e-9;

    /** For Λ given by its one entry, or its entries (1,1), (2,1), (2,2). */
    static WeightedSums of(MixedData data, double... factor) {
        return factor.length == 1
                ? ofLevels(data, factor[0] * factor[0])
                : ofSlopes(
                        data,
                        new Array2DRowRealMatrix(new double[][] {{factor[0], 0}, {factor[1], factor[2]}}));
    }

    /** M is a number where only levels differ: no matrix is made a group, which studies of thousands of sittings feel. */
    private static WeightedSums ofLevels(MixedData data, double ratio) {
        int p = data.coefficients;
        double[][] information = new double[p][p];
        double[] right = new double[p];
        double squares = 0;
        double logs = 0;
        for (MixedData.Products own : data.products) {
            double m = 1 + ratio * own.zz().getEntry(0, 0);
            double share = ratio / m;
            double zy = own.zy().getEntry(0);
            for (int i = 0; i < p; i++) {
                double zx = own.zx().getEntry(0, i);
                right[i] += own.xy().getEntry(i) - share * zx * zy;
                for (int j = 0; j < p; j++) {
                    information[i][j] += own.xx().getEntry(i, j) - share * zx * own.zx().getEntry(0, j);
                }
            }
            squares += own.yy() - share * zy * zy;
            logs += Math.log(m);
        }
        return new WeightedSums(
                new Array2DRowRealMatrix(information, false), new ArrayRealVector(right, false), squares, logs);
    }

    private static WeightedSums ofSlopes(MixedData data, RealMatrix lambda) {
        RealMatrix transposed = lambda.transpose();
        RealMatrix identity = MatrixUtils.createRealIdentityMatrix(lambda.getRowDimension());
        RealMatrix information = new Array2DRowRealMatrix(data.coefficients, data.coefficients);
        RealVector right = new ArrayRealVector(data.coefficients);
        double squares = 0;
        double logs = 0;
        for (MixedData.Products own : data.products) {
            RealMatrix m = identity.add(transposed.multiply(own.zz()).multiply(lambda));
            CholeskyDecomposition cholesky = new CholeskyDecomposition(m, SYMMETRY, 0);
            DecompositionSolver solver = cholesky.getSolver();
            RealMatrix zx = transposed.multiply(own.zx());
            RealVector zy = transposed.operate(own.zy());
            RealVector solved = solver.solve(zy);
            information = information.add(own.xx()).subtract(zx.transposeMultiply(solver.solve(zx)));
            right = right.add(own.xy()).subtract(zx.preMultiply(solved));
            squares += own.yy() - zy.dotProduct(solved);
            logs += Math.log(cholesky.getDeterminant());
        }
        return new WeightedSums(information, right, squares, logs);
    }
}
