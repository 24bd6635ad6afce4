package io.github.tapwright.note;

import io.github.tapwright.signal.ComplexLine;
import io.github.tapwright.signal.OrthonormalBasis;
import io.github.tapwright.signal.ScalarProduct;
import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

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
    private final OrthonormalBasis basis;
    private final double[] strengths;
    private final double[] residual;
    private final double cost;

    PartialFit(LineBand band, List<DecayingTone> tones) {
        this.band = band;
        this.tones = List.copyOf(tones);
        basis = new OrthonormalBasis(2 * tones.size(), band.line()::takeAway);
        for (DecayingTone tone : tones) {
            double[][] own = tone.columns(band.shape());
            columns.add(own);
            basis.add(own[0]);
            basis.add(own[1]);
        }
        residual = band.rows().clone();
        strengths = basis.solve(basis.takeAway(residual));
        cost = ScalarProduct.of(residual, residual);
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
        return strengths[2 * tone];
    }

    double sine(int tone) {
        return strengths[2 * tone + 1];
    }

    /** Amplitude at the beginning of the stretch, re full scale. */
    double amplitude(int tone) {
        return Math.hypot(cosine(tone), sine(tone));
    }

    /** One of its tones with the strength found. */
    SoundingTone sounding(int tone) {
        return new SoundingTone(tones.get(tone), cosine(tone), sine(tone));
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
        return residual[row];
    }

    double degreesOfFreedom() {
        return Math.max(1, residual.length - ComplexLine.COLUMNS - 4 * tones.size());
    }

    /** Derivatives by ω and ln σ of every tone, strengths held. */
    private List<double[]> slopes() {
        List<double[]> slopes = new ArrayList<>();
        for (int m = 0; m < tones.size(); m++) {
            double[] cosineBySigma = columns.get(m)[2];
            double[] sineBySigma = columns.get(m)[3];
            double cosine = cosine(m);
            double sine = sine(m);
            double sigma = tones.get(m).sigma();
            double[] byOmega = new double[residual.length];
            double[] byLogSigma = new double[residual.length];
            for (int r = 0; r < byOmega.length; r++) {
                double c = cosineBySigma[r];
                double s = sineBySigma[r];
                byOmega[r] = cosine * s - sine * c;
                byLogSigma[r] = sigma * (cosine * c + sine * s);
            }
            slopes.add(byOmega);
            slopes.add(byLogSigma);
        }
        return slopes;
    }

    /** The way to a better fit: ω and ln σ of every tone in turn, what the strengths can take up projected out. */
    Descent descent() {
        List<double[]> slopes = slopes();
        slopes.forEach(basis::takeAway);
        return Descent.of(slopes, residual);
    }

    private static DMatrixRMaj matrix(List<double[]> columns) {
        DMatrixRMaj matrix = new DMatrixRMaj(columns.get(0).length, columns.size());
        for (int c = 0; c < matrix.numCols; c++) {
            double[] column = columns.get(c);
            for (int r = 0; r < matrix.numRows; r++) {
                matrix.unsafe_set(r, c, column[r]);
            }
        }
        return matrix;
    }

    /**
     * Covariance of everything that belongs to the tones, for rows of unit variance: (JᵀJ)⁻¹ with the slow columns
     * projected out. Order: cosine and sine strength of each tone, then ω and ln σ of each.
     *
     * @return shape [4M][4M]; null-free, but empty if the tones cannot be told apart
     */
    DMatrixRMaj unitCovariance() {
        int own = 2 * tones.size();
        List<double[]> linear = new ArrayList<>();
        columns.forEach(c -> linear.addAll(List.of(c[0], c[1])));
        linear.addAll(List.of(band.line().columns()));
        int numLinear = linear.size();
        linear.addAll(slopes());
        double[] scale = linear.stream()
                .mapToDouble(column -> Math.sqrt(ScalarProduct.of(column, column)) + 1e-300)
                .toArray();
        DMatrixRMaj all = matrix(linear);
        CommonOps_DDRM.divideCols(all, scale);
        DMatrixRMaj gram = new DMatrixRMaj(all.numCols, all.numCols);
        CommonOps_DDRM.multInner(all, gram);
        if (!CommonOps_DDRM.invert(gram)) {
            return new DMatrixRMaj(0, 0);
        }
        DMatrixRMaj covariance = new DMatrixRMaj(2 * own, 2 * own);
        for (int i = 0; i < 2 * own; i++) {
            for (int j = 0; j < 2 * own; j++) {
                int from = i < own ? i : numLinear + i - own;
                int to = j < own ? j : numLinear + j - own;
                covariance.set(i, j, gram.get(from, to) / (scale[from] * scale[to]));
            }
        }
        return covariance;
    }
}
