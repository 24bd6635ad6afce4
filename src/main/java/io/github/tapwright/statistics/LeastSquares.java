package io.github.tapwright.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** The arithmetic behind {@link LinearFit}. */
final class LeastSquares {

    /** Below this a column of unit length is a sum of those before it. */
    private static final double SINGULAR = 1e-13;

    private static final int REFINEMENTS = 2;

    private LeastSquares() {}

    static LinearFit fit(double[] y, double[][] columns) {
        int rows = y.length;
        int unknowns = columns.length + 1;
        if (rows <= unknowns || Arrays.stream(columns).anyMatch(c -> c.length != rows)) {
            throw new IllegalArgumentException("a fit of " + unknowns + " coefficients needs more than " + unknowns
                    + " values, as many in each column, got " + rows);
        }
        Finite.check(y);
        Finite.check(columns);
        double[][] x = withConstant(columns, rows);
        double[] scale = Arrays.stream(x).mapToDouble(LeastSquares::length).toArray();
        QRDecomposition qr = new QRDecomposition(scaled(x, scale), SINGULAR);
        if (!qr.getSolver().isNonSingular()) {
            throw new IllegalArgumentException(
                    "the columns cannot be told apart: one of them is constant or follows from the others");
        }
        double[] b = new double[unknowns];
        for (int round = 0; round <= REFINEMENTS; round++) {
            RealVector step = qr.getSolver().solve(new ArrayRealVector(residuals(y, x, b)));
            for (int j = 0; j < unknowns; j++) {
                b[j] += step.getEntry(j) / scale[j];
            }
        }
        return result(y, residuals(y, x, b), b, inverse(qr, unknowns), scale);
    }

    private static double[][] withConstant(double[][] columns, int rows) {
        double[][] x = new double[columns.length + 1][];
        x[0] = new double[rows];
        Arrays.fill(x[0], 1);
        System.arraycopy(columns, 0, x, 1, columns.length);
        return x;
    }

    private static double length(double[] column) {
        double length = 0;
        for (double value : column) {
            length = Math.hypot(length, value);
        }
        return length == 0 ? 1 : length;
    }

    private static RealMatrix scaled(double[][] x, double[] scale) {
        RealMatrix matrix = new Array2DRowRealMatrix(x[0].length, x.length);
        for (int j = 0; j < x.length; j++) {
            for (int i = 0; i < x[j].length; i++) {
                matrix.setEntry(i, j, x[j][i] / scale[j]);
            }
        }
        return matrix;
    }

    /** y − Xb, each product kept to twice the digits: the residuals are small differences of large numbers. */
    private static double[] residuals(double[] y, double[][] x, double[] b) {
        double[] residuals = new double[y.length];
        for (int i = 0; i < y.length; i++) {
            double sum = y[i];
            double lost = 0;
            for (int j = 0; j < b.length; j++) {
                double product = -x[j][i] * b[j];
                double rest = Math.fma(-x[j][i], b[j], -product);
                double next = sum + product;
                double part = next - sum;
                lost += (sum - (next - part)) + (product - part) + rest;
                sum = next;
            }
            residuals[i] = sum + lost;
        }
        return residuals;
    }

    /** (XᵀX)⁻¹ of the scaled columns, from the triangle alone. */
    private static RealMatrix inverse(QRDecomposition qr, int unknowns) {
        RealMatrix triangle = qr.getR().getSubMatrix(0, unknowns - 1, 0, unknowns - 1);
        RealMatrix inverse = MatrixUtils.createRealIdentityMatrix(unknowns);
        for (int j = 0; j < unknowns; j++) {
            RealVector column = inverse.getColumnVector(j);
            MatrixUtils.solveUpperTriangularSystem(triangle, column);
            inverse.setColumnVector(j, column);
        }
        return inverse.multiplyTransposed(inverse);
    }

    private static LinearFit result(double[] y, double[] residuals, double[] b, RealMatrix inverse, double[] scale) {
        int freedom = y.length - b.length;
        double squares = Arrays.stream(residuals).map(e -> e * e).sum();
        double about = Sums.squaresAboutMean(y);
        double variance = squares / freedom;
        List<Estimate> coefficients = new ArrayList<>();
        for (int i = 0; i < b.length; i++) {
            double ofCoefficient = variance * inverse.getEntry(i, i) / (scale[i] * scale[i]);
            coefficients.add(new Estimate(b[i], Math.sqrt(ofCoefficient), freedom));
        }
        double explained = about > 0 ? 1 - squares / about : 1;
        return new LinearFit(coefficients, Math.sqrt(variance), explained, freedom);
    }
}
