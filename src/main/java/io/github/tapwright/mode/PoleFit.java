package io.github.tapwright.mode;

import io.github.tapwright.signal.OrthonormalBasis;
import io.github.tapwright.signal.ScalarProduct;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
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
    private final OrthonormalBasis basis;
    private final double[][] derivatives;
    private final double[][] strengths;
    private final double[][] residual;
    private final double cost;

    PoleFit(SpectralWindow window, List<Pole> poles) {
        this.window = window;
        this.poles = List.copyOf(poles);
        basis = new OrthonormalBasis(2 * poles.size());
        derivatives = new double[2 * poles.size()][];
        for (int m = 0; m < poles.size(); m++) {
            double[][] columns = window.columns(poles.get(m));
            basis.add(columns[0]);
            basis.add(columns[1]);
            derivatives[2 * m] = columns[2];
            derivatives[2 * m + 1] = columns[3];
        }
        residual = new double[window.strikes()][];
        strengths = new double[window.strikes()][];
        double sum = 0;
        for (int s = 0; s < residual.length; s++) {
            residual[s] = window.data(s).clone();
            strengths[s] = basis.solve(basis.takeAway(residual[s]));
            sum += ScalarProduct.of(residual[s], residual[s]);
        }
        cost = sum;
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

    /** The power that the fit leaves over in every bin, strikes added up. */
    double[] powerLeft() {
        double[] power = new double[window.shape().bins()];
        for (double[] left : residual) {
            for (int k = 0; k < power.length; k++) {
                power[k] += left[k] * left[k] + left[k + power.length] * left[k + power.length];
            }
        }
        return power;
    }

    /** Free numbers: rows less linear parameters in each strike, less the shared poles. */
    double degreesOfFreedom() {
        int linear = 2 * poles.size() + window.companionCount();
        return Math.max(1.0, (double) window.strikes() * (window.rows() - linear) - 2.0 * poles.size());
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
            for (double[] strength : strengths) {
                amplitudes.add(strength[2 * m]);
                amplitudes.add(strength[2 * m + 1]);
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
        double aa = 0;
        double ab = 0;
        double bb = 0;
        for (double[] column : inverseTriangle()) {
            double a = column[2 * pole];
            double b = column[2 * pole + 1];
            aa += a * a;
            ab += a * b;
            bb += b * b;
        }
        double determinant = Math.max(aa * bb - ab * ab, 1e-300);
        double rise = 0;
        for (double[] strength : strengths) {
            double x = strength[2 * pole];
            double y = strength[2 * pole + 1];
            rise += (x * x * bb - 2 * x * y * ab + y * y * aa) / determinant;
        }
        return cost + rise;
    }

    /** By how much the cost would fall with one pole more, the others staying where they are. */
    double dropWith(TrialPole trial) {
        return trial.drop(basis, residual);
    }

    /** R⁻¹, column by column. */
    private double[][] inverseTriangle() {
        double[][] unit = new double[2 * poles.size()][2 * poles.size()];
        for (int c = 0; c < unit.length; c++) {
            unit[c][c] = 1;
            unit[c] = basis.solve(unit[c]);
        }
        return unit;
    }

    /** Variance of a pole's cosine and sine strength in any strike, the poles taken as known. */
    double strengthVariance(int pole) {
        double sum = 0;
        for (double[] column : inverseTriangle()) {
            sum += column[2 * pole] * column[2 * pole] + column[2 * pole + 1] * column[2 * pole + 1];
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
        double[][] within = new double[2 * m][];
        double[][] gram = new double[2 * m][2 * m];
        double[][] against = new double[2 * m][residual.length];
        for (int i = 0; i < 2 * m; i++) {
            within[i] = basis.shares(derivatives[i]);
            // What the strengths can take up does not count; the residual has nothing of that kind.
            ScalarProduct.ofEach(derivatives[i], derivatives, i + 1, gram[i]);
            for (int j = 0; j <= i; j++) {
                gram[i][j] -= ScalarProduct.of(within[i], within[j]);
                gram[j][i] = gram[i][j];
            }
            ScalarProduct.ofEach(derivatives[i], residual, residual.length, against[i]);
        }
        DMatrixRMaj curvature = new DMatrixRMaj(2 * m, 2 * m);
        DMatrixRMaj slopes = new DMatrixRMaj(2 * m, residual.length);
        for (int s = 0; s < residual.length; s++) {
            addStrike(s, gram, against, curvature, slopes);
        }
        return new Normal(curvature, slopes);
    }

    private void addStrike(int s, double[][] gram, double[][] against, DMatrixRMaj curvature, DMatrixRMaj slopes) {
        int m = poles.size();
        // With A and B the cosine's and the sine's derivative by σ, a strike of strengths a and b moves by
        // a·A + b·B with σ and by a·B − b·A with ω.
        double[] onCosine = new double[2 * m];
        double[] onSine = new double[2 * m];
        for (int p = 0; p < m; p++) {
            onCosine[2 * p] = strengths[s][2 * p];
            onSine[2 * p] = strengths[s][2 * p + 1];
            onCosine[2 * p + 1] = -onSine[2 * p];
            onSine[2 * p + 1] = onCosine[2 * p];
        }
        for (int i = 0; i < 2 * m; i++) {
            int ci = 2 * (i / 2);
            slopes.set(i, s, onCosine[i] * against[ci][s] + onSine[i] * against[ci + 1][s]);
            for (int j = 0; j <= i; j++) {
                int cj = 2 * (j / 2);
                double sum = onCosine[i] * (onCosine[j] * gram[ci][cj] + onSine[j] * gram[ci][cj + 1])
                        + onSine[i] * (onCosine[j] * gram[ci + 1][cj] + onSine[j] * gram[ci + 1][cj + 1]);
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
