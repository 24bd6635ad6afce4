package io.github.tapwright.note;

import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.QRDecomposition;

/**
 * One evaluation of a partial's decaying sines in a band: best strengths, what they leave over, and where to go next.
 *
 * <p>Variable projection: for given tones the strengths are linear least squares, so only ω and ln σ of each tone are
 * searched. Derivatives by Kaufman's approximation. Sources: [GolubPereyra1973], [Kaufman1975].
 */
final class PartialFit {

    private final LineBand band;
    private final List<DecayingTone> tones;
    private final List<double[][]> columns = new ArrayList<>();
    private final DMatrixRMaj basis;
    private final DMatrixRMaj q;
    private final DMatrixRMaj strengths;
    private final DMatrixRMaj residual;
    private final double cost;

    PartialFit(LineBand band, List<DecayingTone> tones) {
        this.band = band;
        this.tones = List.copyOf(tones);
        List<double[]> linear = new ArrayList<>();
        for (DecayingTone tone : tones) {
            double[][] own = tone.columns(band.shape());
            columns.add(own);
            linear.add(own[0]);
            linear.add(own[1]);
        }
        linear.addAll(List.of(band.companions()));
        basis = matrix(linear);
        QRDecomposition<DMatrixRMaj> qr = DecompositionFactory_DDRM.qr(basis.numRows, basis.numCols);
        qr.decompose(basis.copy());
        q = qr.getQ(null, true);
        strengths = new DMatrixRMaj(basis.numCols, 1);
        residual = DMatrixRMaj.wrap(basis.numRows, 1, band.rows().clone());
        CommonOps_DDRM.multTransA(q, residual, strengths);
        CommonOps_DDRM.multAdd(-1, q, strengths, residual);
        solve(qr.getR(null, true), strengths);
        cost = CommonOps_DDRM.dot(residual, residual);
    }

    private static DMatrixRMaj matrix(List<double[]> columns) {
        int rows = columns.get(0).length;
        DMatrixRMaj matrix = new DMatrixRMaj(rows, columns.size());
        for (int c = 0; c < columns.size(); c++) {
            for (int r = 0; r < rows; r++) {
                matrix.set(r, c, columns.get(c)[r]);
            }
        }
        return matrix;
    }

    private static void solve(DMatrixRMaj triangle, DMatrixRMaj b) {
        double largest = CommonOps_DDRM.elementMaxAbs(triangle);
        for (int i = b.numRows - 1; i >= 0; i--) {
            double sum = b.get(i);
            for (int j = i + 1; j < b.numRows; j++) {
                sum -= triangle.get(i, j) * b.get(j);
            }
            double diagonal = triangle.get(i, i);
            b.set(i, Math.abs(diagonal) < 1e-13 * largest ? 0 : sum / diagonal);
        }
    }

    List<DecayingTone> tones() {
        return tones;
    }

    LineBand band() {
        return band;
    }

    double cost() {
        return cost;
    }

    double cosine(int tone) {
        return strengths.get(2 * tone);
    }

    double sine(int tone) {
        return strengths.get(2 * tone + 1);
    }

    /** Amplitude at the beginning of the stretch, re full scale. */
    double amplitude(int tone) {
        return Math.hypot(cosine(tone), sine(tone));
    }

    /** Contribution of a tone to a row, given the tone's columns there. */
    double value(int tone, double[][] own, int row) {
        return cosine(tone) * own[0][row] + sine(tone) * own[1][row];
    }

    /** The tone that carries most energy, |c|²/σ. */
    int strongest() {
        int strongest = 0;
        for (int m = 1; m < tones.size(); m++) {
            strongest = energy(m) > energy(strongest) ? m : strongest;
        }
        return strongest;
    }

    private double energy(int tone) {
        return amplitude(tone) * amplitude(tone) / tones.get(tone).sigma();
    }

    double residual(int row) {
        return residual.get(row);
    }

    double degreesOfFreedom() {
        return Math.max(1, basis.numRows - basis.numCols - 2 * tones.size());
    }

    /** Derivatives by ω and ln σ of every tone, strengths held. */
    private DMatrixRMaj slopes() {
        List<double[]> slopes = new ArrayList<>();
        for (int m = 0; m < tones.size(); m++) {
            double[][] own = columns.get(m);
            double[] byOmega = new double[basis.numRows];
            double[] byLogSigma = new double[basis.numRows];
            for (int r = 0; r < basis.numRows; r++) {
                byOmega[r] = cosine(m) * own[3][r] - sine(m) * own[2][r];
                byLogSigma[r] = tones.get(m).sigma() * (cosine(m) * own[2][r] + sine(m) * own[3][r]);
            }
            slopes.add(byOmega);
            slopes.add(byLogSigma);
        }
        return matrix(slopes);
    }

    /**
     * One step of Levenberg and Marquardt. Source: [Marquardt1963].
     *
     * @param lambda damping
     * @return steps of ω and ln σ for every tone in turn; empty if the equations cannot be solved
     */
    double[] step(double lambda) {
        DMatrixRMaj slopes = slopes();
        DMatrixRMaj inside = new DMatrixRMaj(q.numCols, slopes.numCols);
        CommonOps_DDRM.multTransA(q, slopes, inside);
        CommonOps_DDRM.multAdd(-1, q, inside, slopes);
        DMatrixRMaj gram = new DMatrixRMaj(slopes.numCols, slopes.numCols);
        CommonOps_DDRM.multInner(slopes, gram);
        for (int i = 0; i < gram.numRows; i++) {
            gram.add(i, i, lambda * gram.get(i, i) + 1e-300);
        }
        DMatrixRMaj right = new DMatrixRMaj(slopes.numCols, 1);
        CommonOps_DDRM.multTransA(slopes, residual, right);
        DMatrixRMaj step = new DMatrixRMaj(slopes.numCols, 1);
        return CommonOps_DDRM.solve(gram, right, step) ? step.data : new double[0];
    }

    /**
     * Covariance of everything that belongs to the tones, for rows of unit variance: (JᵀJ)⁻¹ with the slow columns
     * projected out. Order: cosine and sine strength of each tone, then ω and ln σ of each.
     *
     * @return shape [4M][4M]; null-free, but empty if the tones cannot be told apart
     */
    DMatrixRMaj unitCovariance() {
        int own = 2 * tones.size();
        DMatrixRMaj all = new DMatrixRMaj(basis.numRows, basis.numCols + own);
        CommonOps_DDRM.insert(basis, all, 0, 0);
        CommonOps_DDRM.insert(slopes(), all, 0, basis.numCols);
        double[] scale = new double[all.numCols];
        for (int c = 0; c < all.numCols; c++) {
            DMatrixRMaj column = CommonOps_DDRM.extractColumn(all, c, null);
            scale[c] = Math.sqrt(CommonOps_DDRM.dot(column, column)) + 1e-300;
        }
        CommonOps_DDRM.divideCols(all, scale);
        DMatrixRMaj gram = new DMatrixRMaj(all.numCols, all.numCols);
        CommonOps_DDRM.multInner(all, gram);
        if (!CommonOps_DDRM.invert(gram)) {
            return new DMatrixRMaj(0, 0);
        }
        DMatrixRMaj covariance = new DMatrixRMaj(2 * own, 2 * own);
        for (int i = 0; i < 2 * own; i++) {
            for (int j = 0; j < 2 * own; j++) {
                int from = i < own ? i : basis.numCols + i - own;
                int to = j < own ? j : basis.numCols + j - own;
                covariance.set(i, j, gram.get(from, to) / (scale[from] * scale[to]));
            }
        }
        return covariance;
    }
}
