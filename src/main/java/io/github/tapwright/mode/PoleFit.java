package io.github.tapwright.mode;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.decomposition.QRDecomposition;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * One evaluation of a set of poles in a window: best strengths in every strike, what they leave over, and
 * the normal equations of the poles.
 *
 * <p>Variable projection: for given poles the strengths are a linear least-squares problem, so only the
 * poles are searched. Derivatives by Kaufman's approximation. Source: [GolubPereyra1973], [Kaufman1975].
 */
final class PoleFit {

    private final List<Pole> poles;
    private final SpectralWindow window;
    private final DMatrixRMaj q;
    private final DMatrixRMaj strengths;
    private final DMatrixRMaj residual;
    private final DMatrixRMaj triangle;
    private final double[][][] columns;
    private final double cost;

    PoleFit(SpectralWindow window, List<Pole> poles) {
        this.window = window;
        this.poles = List.copyOf(poles);
        int rows = window.rows();
        int count = 2 * poles.size() + window.companions().size();
        DMatrixRMaj basis = new DMatrixRMaj(rows, count);
        columns = new double[poles.size()][4][rows];
        int at = 0;
        for (int m = 0; m < poles.size(); m++) {
            window.shape().fill(poles.get(m).omega(), poles.get(m).sigma(), columns[m]);
            setColumn(basis, at++, columns[m][0]);
            setColumn(basis, at++, columns[m][1]);
        }
        for (double[] companion : window.companions()) {
            setColumn(basis, at++, companion);
        }
        QRDecomposition<DMatrixRMaj> qr = DecompositionFactory_DDRM.qr(rows, count);
        qr.decompose(basis.copy());
        q = qr.getQ(null, true);
        triangle = qr.getR(null, true);
        DMatrixRMaj projected = new DMatrixRMaj(count, window.strikes());
        CommonOps_DDRM.multTransA(q, window.data(), projected);
        residual = window.data().copy();
        CommonOps_DDRM.multAdd(-1, q, projected, residual);
        strengths = projected;
        solveTriangle(strengths);
        double sum = 0;
        for (double r : residual.data) {
            sum += r * r;
        }
        cost = sum;
    }

    private static void setColumn(DMatrixRMaj matrix, int column, double[] values) {
        for (int r = 0; r < values.length; r++) {
            matrix.set(r, column, values[r]);
        }
    }

    private void solveTriangle(DMatrixRMaj b) {
        for (int c = 0; c < b.numCols; c++) {
            for (int i = b.numRows - 1; i >= 0; i--) {
                double sum = b.get(i, c);
                for (int j = i + 1; j < b.numRows; j++) {
                    sum -= triangle.get(i, j) * b.get(j, c);
                }
                double diagonal = triangle.get(i, i);
                b.set(i, c, Math.abs(diagonal) < 1e-12 ? 0 : sum / diagonal);
            }
        }
    }

    List<Pole> poles() {
        return poles;
    }

    SpectralWindow window() {
        return window;
    }

    double cost() {
        return cost;
    }

    /** What the fit leaves over, rows as in the window. */
    DMatrixRMaj residual() {
        return residual;
    }

    /** Free numbers: rows less linear parameters in each strike, less the shared poles. */
    double degreesOfFreedom() {
        return Math.max(1.0, (double) window.strikes() * (window.rows() - triangle.numCols) - 2.0 * poles.size());
    }

    /** Variance of one row's noise. */
    double noiseVariance() {
        return cost / degreesOfFreedom();
    }

    /** The poles with their strengths. */
    List<SharedMode> modes() {
        List<SharedMode> modes = new ArrayList<>();
        for (int m = 0; m < poles.size(); m++) {
            List<Double> amplitudes = new ArrayList<>();
            for (int s = 0; s < window.strikes(); s++) {
                amplitudes.add(strengths.get(2 * m, s));
                amplitudes.add(strengths.get(2 * m + 1, s));
            }
            modes.add(new SharedMode(poles.get(m), amplitudes));
        }
        return modes;
    }

    /**
     * What the cost would be without one pole, the others staying where they are.
     *
     * <p>Leaving out columns S raises the cost by c_Sᵀ·[((XᵀX)⁻¹)_SS]⁻¹·c_S, with c the strengths. Source:
     * [SeberLee2003], sec. 3.8 (from memory, to be verified).
     */
    double costWithout(int pole) {
        DMatrixRMaj inverse = inverseTriangle();
        double aa = 0;
        double ab = 0;
        double bb = 0;
        for (int c = 0; c < inverse.numCols; c++) {
            double a = inverse.get(2 * pole, c);
            double b = inverse.get(2 * pole + 1, c);
            aa += a * a;
            ab += a * b;
            bb += b * b;
        }
        double determinant = Math.max(aa * bb - ab * ab, 1e-300);
        double rise = 0;
        for (int s = 0; s < window.strikes(); s++) {
            double x = strengths.get(2 * pole, s);
            double y = strengths.get(2 * pole + 1, s);
            rise += (x * x * bb - 2 * x * y * ab + y * y * aa) / determinant;
        }
        return cost + rise;
    }

    /** By how much the cost would fall with one pole more, the others staying where they are. */
    double dropWith(Pole pole) {
        int rows = window.rows();
        double[][] both = new double[4][rows];
        window.shape().fill(pole.omega(), pole.sigma(), both);
        DMatrixRMaj added = new DMatrixRMaj(rows, 2);
        setColumn(added, 0, both[0]);
        setColumn(added, 1, both[1]);
        DMatrixRMaj inside = new DMatrixRMaj(q.numCols, 2);
        CommonOps_DDRM.multTransA(q, added, inside);
        CommonOps_DDRM.multAdd(-1, q, inside, added);
        DMatrixRMaj gram = new DMatrixRMaj(2, 2);
        CommonOps_DDRM.multInner(added, gram);
        DMatrixRMaj against = new DMatrixRMaj(2, window.strikes());
        CommonOps_DDRM.multTransA(added, residual, against);
        double determinant = Math.max(gram.get(0, 0) * gram.get(1, 1) - gram.get(0, 1) * gram.get(0, 1), 1e-300);
        double drop = 0;
        for (int s = 0; s < window.strikes(); s++) {
            double x = against.get(0, s);
            double y = against.get(1, s);
            drop += (x * x * gram.get(1, 1) - 2 * x * y * gram.get(0, 1) + y * y * gram.get(0, 0)) / determinant;
        }
        return drop;
    }

    private DMatrixRMaj inverseTriangle() {
        DMatrixRMaj unit = new DMatrixRMaj(triangle.numCols, triangle.numCols);
        CommonOps_DDRM.setIdentity(unit);
        solveTriangle(unit);
        return unit;
    }

    /** Variance of a pole's cosine and sine strength in any strike, the poles taken as known. */
    double strengthVariance(int pole) {
        DMatrixRMaj unit = inverseTriangle();
        double sum = 0;
        for (int row = 2 * pole; row < 2 * pole + 2; row++) {
            for (int c = 0; c < unit.numCols; c++) {
                sum += unit.get(row, c) * unit.get(row, c);
            }
        }
        return noiseVariance() * sum / 2;
    }

    /**
     * Normal equations of the poles' parameters (σ and ω in turn).
     *
     * @return curvature JᵀJ and, strike by strike, Jᵀr
     */
    Normal normal() {
        int m = poles.size();
        DMatrixRMaj derivatives = new DMatrixRMaj(window.rows(), 2 * m);
        for (int p = 0; p < m; p++) {
            setColumn(derivatives, 2 * p, columns[p][2]);
            setColumn(derivatives, 2 * p + 1, columns[p][3]);
        }
        DMatrixRMaj inside = new DMatrixRMaj(q.numCols, 2 * m);
        CommonOps_DDRM.multTransA(q, derivatives, inside);
        CommonOps_DDRM.multAdd(-1, q, inside, derivatives);
        DMatrixRMaj gram = new DMatrixRMaj(2 * m, 2 * m);
        CommonOps_DDRM.multInner(derivatives, gram);
        DMatrixRMaj against = new DMatrixRMaj(2 * m, window.strikes());
        CommonOps_DDRM.multTransA(derivatives, residual, against);
        DMatrixRMaj curvature = new DMatrixRMaj(2 * m, 2 * m);
        DMatrixRMaj slopes = new DMatrixRMaj(2 * m, window.strikes());
        for (int s = 0; s < window.strikes(); s++) {
            addStrike(s, gram, against, curvature, slopes);
        }
        return new Normal(curvature, slopes);
    }

    private void addStrike(int s, DMatrixRMaj gram, DMatrixRMaj against, DMatrixRMaj curvature, DMatrixRMaj slopes) {
        int m = poles.size();
        // With A and B the cosine's and the sine's derivative by σ, a strike of strengths a and b moves by
        // a·A + b·B with σ and by a·B − b·A with ω.
        double[] onCosine = new double[2 * m];
        double[] onSine = new double[2 * m];
        for (int p = 0; p < m; p++) {
            onCosine[2 * p] = strengths.get(2 * p, s);
            onSine[2 * p] = strengths.get(2 * p + 1, s);
            onCosine[2 * p + 1] = -onSine[2 * p];
            onSine[2 * p + 1] = onCosine[2 * p];
        }
        for (int i = 0; i < 2 * m; i++) {
            int ci = 2 * (i / 2);
            slopes.set(i, s, onCosine[i] * against.get(ci, s) + onSine[i] * against.get(ci + 1, s));
            for (int j = 0; j <= i; j++) {
                int cj = 2 * (j / 2);
                double sum = onCosine[i] * (onCosine[j] * gram.get(ci, cj) + onSine[j] * gram.get(ci, cj + 1))
                        + onSine[i] * (onCosine[j] * gram.get(ci + 1, cj) + onSine[j] * gram.get(ci + 1, cj + 1));
                curvature.add(i, j, sum);
                if (i != j) {
                    curvature.add(j, i, sum);
                }
            }
        }
    }

    /**
     * Normal equations.
     *
     * @param curvature JᵀJ, shape [2M][2M]
     * @param slopes Jᵀr, shape [2M][strikes]
     */
    record Normal(DMatrixRMaj curvature, DMatrixRMaj slopes) {

        /** Solves (JᵀJ + λ·diag)·step = Jᵀr; empty if it cannot be solved. */
        double[] step(double lambda) {
            int n = curvature.numRows;
            DMatrixRMaj damped = curvature.copy();
            DMatrixRMaj right = new DMatrixRMaj(n, 1);
            for (int i = 0; i < n; i++) {
                damped.add(i, i, lambda * curvature.get(i, i) + 1e-300);
                double sum = 0;
                for (int s = 0; s < slopes.numCols; s++) {
                    sum += slopes.get(i, s);
                }
                right.set(i, 0, sum);
            }
            DMatrixRMaj solution = new DMatrixRMaj(n, 1);
            LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(n);
            if (!solver.setA(damped)) {
                return new double[0];
            }
            solver.solve(right, solution);
            return Arrays.copyOf(solution.data, n);
        }
    }
}
