package io.github.tapwright.synthesis;

import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.hipparchus.complex.Complex;

/**
 * The Cramér-Rao bound: the smallest standard deviations any unbiased measurement of the poles can have.
 *
 * <p>Model: strike k gives y_k[n] = Σ_m Re(c_km·exp(s_m·n/rate)) + white Gaussian noise of standard deviation
 * σ. The poles s_m = −σ_m + iω_m are shared by all strikes; every c_km is free. With B the columns of the free
 * linear parameters and D_k the columns ∂y_k/∂(ω_m, σ_m), the Fisher information of the poles is
 * (1/σ²)·Σ_k [D_kᵀD_k − D_kᵀB(BᵀB)⁻¹BᵀD_k], because the linear parameters are projected out; its inverse bounds
 * the covariance. Source: the sums over strikes and the projection are derived here; for one record of damped
 * sinusoids [YaoPandit1995] and [HuaSarkar1990], from memory, to be verified.
 *
 * <p>Other noise than white is not covered: with pink-ish noise the bound says nothing exact.
 */
public final class CramerRao {

    /**
     * The bound of one mode.
     *
     * @param frequencyHz least standard deviation of the undamped frequency
     * @param q least standard deviation of Q
     * @param decayTimeSeconds least standard deviation of the 60 dB time
     */
    public record Bound(double frequencyHz, double q, double decayTimeSeconds) {}

    private final List<Complex> poles;
    private final double rateHz;
    private final int samples;
    private final DMatrixRMaj information;

    private CramerRao(List<Complex> poles, double rateHz, int samples) {
        this.poles = poles;
        this.rateHz = rateHz;
        this.samples = samples;
        this.information = new DMatrixRMaj(2 * poles.size(), 2 * poles.size());
    }

    /**
     * The bounds for a scene's good strikes, each observed from the end of its contact.
     *
     * @param taps made with white noise
     * @param seconds how long each decay is observed
     * @return one bound for each mode, in order
     */
    public static List<Bound> of(SyntheticTaps taps, double seconds) {
        double rate = taps.recording().sampleRate().hertz();
        List<List<Complex>> amplitudes = new ArrayList<>();
        for (TrueStrike strike : taps.goodStrikes()) {
            List<Complex> own = new ArrayList<>();
            for (int m = 0; m < taps.modes().size(); m++) {
                own.add(taps.amplitudeAfterContact(strike, m));
            }
            amplitudes.add(own);
        }
        List<Complex> poles = taps.modes().stream().map(TrueMode::pole).toList();
        return of(poles, amplitudes, rate, (int) Math.round(seconds * rate), taps.noiseRms());
    }

    /**
     * The bounds for known poles and amplitudes.
     *
     * @param poles s_m, upper half plane, all different
     * @param amplitudes c_km, a list for each strike
     * @param rateHz samples per second
     * @param samples observed in each strike
     * @param noiseRms σ
     * @return one bound for each mode, in order
     */
    public static List<Bound> of(
            List<Complex> poles, List<List<Complex>> amplitudes, double rateHz, int samples, double noiseRms) {
        CramerRao bound = new CramerRao(List.copyOf(poles), rateHz, samples);
        DMatrixRMaj basis = bound.basis();
        DMatrixRMaj gram = product(basis, basis);
        for (List<Complex> own : amplitudes) {
            bound.observe(basis, gram, bound.derivatives(own));
        }
        DMatrixRMaj covariance = new DMatrixRMaj(bound.information);
        invert(covariance);
        CommonOps_DDRM.scale(noiseRms * noiseRms, covariance);
        return bound.bounds(covariance);
    }

    /** Columns Re exp(s·t) and Im exp(s·t) of every pole. */
    private DMatrixRMaj basis() {
        return columns(poles.stream().map(s -> Complex.ONE).toList(), false);
    }

    /** Columns ∂y/∂ω = Re(i·t·c·e^(st)) = −t·Im(c·e^(st)) and ∂y/∂σ = −t·Re(c·e^(st)). */
    private DMatrixRMaj derivatives(List<Complex> amplitudes) {
        return columns(amplitudes, true);
    }

    private DMatrixRMaj columns(List<Complex> amplitudes, boolean timesTime) {
        DMatrixRMaj columns = new DMatrixRMaj(samples, 2 * poles.size());
        for (int m = 0; m < poles.size(); m++) {
            Complex value = amplitudes.get(m);
            Complex step = poles.get(m).divide(rateHz).exp();
            for (int n = 0; n < samples; n++) {
                double weight = timesTime ? -n / rateHz : 1;
                columns.set(n, 2 * m, weight * value.getImaginary());
                columns.set(n, 2 * m + 1, weight * value.getReal());
                value = value.multiply(step);
            }
        }
        return columns;
    }

    private void observe(DMatrixRMaj basis, DMatrixRMaj gram, DMatrixRMaj derivatives) {
        DMatrixRMaj cross = product(basis, derivatives);
        DMatrixRMaj solved = new DMatrixRMaj(cross.numRows, cross.numCols);
        if (!CommonOps_DDRM.solve(gram, cross, solved)) {
            throw new IllegalArgumentException("the poles are not all different");
        }
        CommonOps_DDRM.addEquals(information, product(derivatives, derivatives));
        CommonOps_DDRM.addEquals(information, -1, product(cross, solved));
    }

    private List<Bound> bounds(DMatrixRMaj covariance) {
        List<Bound> bounds = new ArrayList<>();
        for (int m = 0; m < poles.size(); m++) {
            double omega = poles.get(m).getImaginary();
            double sigma = -poles.get(m).getReal();
            double size = poles.get(m).norm();
            double frequency = spread(covariance, m, omega / size, sigma / size) / (2 * Math.PI);
            double q = spread(covariance, m, omega / (2 * sigma * size), 1 / (2 * size) - size / (2 * sigma * sigma));
            double decayTime = spread(covariance, m, 0, Math.log(1000) / (sigma * sigma));
            bounds.add(new Bound(frequency, q, decayTime));
        }
        return bounds;
    }

    /** Standard deviation of a function of (ω_m, σ_m) with the given slopes. */
    private static double spread(DMatrixRMaj covariance, int m, double byOmega, double bySigma) {
        int i = 2 * m;
        return Math.sqrt(byOmega * byOmega * covariance.get(i, i)
                + 2 * byOmega * bySigma * covariance.get(i, i + 1)
                + bySigma * bySigma * covariance.get(i + 1, i + 1));
    }

    private static DMatrixRMaj product(DMatrixRMaj left, DMatrixRMaj right) {
        DMatrixRMaj product = new DMatrixRMaj(left.numCols, right.numCols);
        CommonOps_DDRM.multTransA(left, right, product);
        return product;
    }

    private static void invert(DMatrixRMaj matrix) {
        if (!CommonOps_DDRM.invert(matrix)) {
            throw new IllegalArgumentException("these strikes carry no information about the poles");
        }
    }
}
