package io.github.tapwright.statistics;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * What a fit needs of all groups together, each weighted with W⁻¹ = I − Λ²zzᵀ/M, M = 1 + Λ²zᵀz.
 *
 * @param information XᵀW⁻¹X
 * @param right XᵀW⁻¹y
 * @param squares yᵀW⁻¹y
 * @param logDeterminants of all W together
 */
record WeightedSums(RealMatrix information, RealVector right, double squares, double logDeterminants) {

    /** M is a number: no matrix is made a group, which studies of thousands of sittings feel. */
    static WeightedSums of(MixedData data, double factor) {
        double ratio = factor * factor;
        int p = data.coefficients;
        double[][] information = new double[p][p];
        double[] right = new double[p];
        double squares = 0;
        double logs = 0;
        for (MixedData.Products own : data.products) {
            double m = 1 + ratio * own.zz();
            double share = ratio / m;
            double zy = own.zy();
            for (int i = 0; i < p; i++) {
                double zx = own.zx().getEntry(i);
                right[i] += own.xy().getEntry(i) - share * zx * zy;
                for (int j = 0; j < p; j++) {
                    information[i][j] +=
                            own.xx().getEntry(i, j) - share * zx * own.zx().getEntry(j);
                }
            }
            squares += own.yy() - share * zy * zy;
            logs += Math.log(m);
        }
        return new WeightedSums(
                new Array2DRowRealMatrix(information, false), new ArrayRealVector(right, false), squares, logs);
    }
}
