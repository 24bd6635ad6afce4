package io.github.tapwright.note;

import io.github.tapwright.signal.ScalarProduct;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/** The normal equations of one Gauss-Newton step, kept so that a step that was too long can be shortened. */
final class Descent {

    private static final double LEAST = 1e-300;

    private final DMatrixRMaj gram;
    private final DMatrixRMaj right;

    private Descent(DMatrixRMaj gram, DMatrixRMaj right) {
        this.gram = gram;
        this.right = right;
    }

    /** From the derivatives of the model by every number, and what is left over. */
    static Descent of(List<double[]> slopes, double[] residual) {
        double[][] rows = slopes.toArray(double[][]::new);
        int n = rows.length;
        DMatrixRMaj gram = new DMatrixRMaj(n, n);
        DMatrixRMaj right = new DMatrixRMaj(n, 1);
        ScalarProduct.ofEach(residual, rows, n, right.data);
        double[] products = new double[n];
        for (int i = 0; i < n; i++) {
            ScalarProduct.ofEach(rows[i], rows, i + 1, products);
            for (int j = 0; j <= i; j++) {
                gram.set(i, j, products[j]);
                gram.set(j, i, products[j]);
            }
        }
        return new Descent(gram, right);
    }

    /**
     * One step of Levenberg and Marquardt. Source: [Marquardt1963].
     *
     * @param lambda damping
     * @return step of every number; empty if the equations cannot be solved
     */
    double[] step(double lambda) {
        DMatrixRMaj damped = gram.copy();
        for (int i = 0; i < damped.numRows; i++) {
            damped.add(i, i, lambda * damped.get(i, i) + LEAST);
        }
        DMatrixRMaj step = new DMatrixRMaj(right.numRows, 1);
        return CommonOps_DDRM.solve(damped, right, step) ? step.data : new double[0];
    }

    /** By how much a step should lower the cost if it were not damped; damping's own shortening is made good. */
    double promise(double[] step, double lambda) {
        return (1 + lambda) * ScalarProduct.of(step, right.data);
    }
}
