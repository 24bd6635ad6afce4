package io.github.tapwright.signal;

/**
 * The exact spectrum of a decaying sine over a finite stretch, and its derivatives.
 *
 * <p>A real decaying sine is a·Re(zⁿ) + b·Im(zⁿ), so each has two real columns. With z = exp((−σ+iω)/rate), and
 * w = exp(−2πi·k/N), the discrete transform of zⁿ over N samples is g(z) = (1−zᴺ)/(1−z·w). The columns are
 * (g(z)+g(z̄))/2 for the cosine and (g(z)−g(z̄))/(2i) for the sine. No leakage is left to chance: cutting
 * the decay at N samples is part of the formula. Derived here.
 */
public final class LineShape {

    private final double[] wRe;
    private final double[] wIm;
    private final double rateHz;
    private final int length;

    /**
     * Prepares a run of bins.
     *
     * @param firstBin first bin k
     * @param bins how many bins
     * @param length N, samples of each decay
     * @param rateHz samples per second
     */
    public LineShape(int firstBin, int bins, int length, double rateHz) {
        this.length = length;
        this.rateHz = rateHz;
        wRe = new double[bins];
        wIm = new double[bins];
        for (int i = 0; i < bins; i++) {
            double angle = -2 * Math.PI * (firstBin + i) / length;
            wRe[i] = Math.cos(angle);
            wIm[i] = Math.sin(angle);
        }
    }

    /**
     * How many bins.
     *
     * @return at least 1
     */
    public int bins() {
        return wRe.length;
    }

    /**
     * Angular frequency of a bin.
     *
     * @param bin from 0, counted from the first bin of the run
     * @return rad/s
     */
    public double omega(int bin) {
        return -Math.atan2(wIm[bin], wRe[bin]) * rateHz;
    }

    /**
     * Fills the four columns of a decaying sine: cosine, sine, then both differentiated by σ. The derivatives by ω are
     * the same two: that of the cosine is the sine's by σ, that of the sine is minus the cosine's by σ.
     *
     * @param omega ω, damped angular frequency, rad/s, greater than 0
     * @param sigma σ, decay rate of the amplitude, 1/s, 0 for a steady tone
     * @param columns shape [4][2·bins]: real parts first, imaginary parts after them
     */
    public void fill(double omega, double sigma, double[][] columns) {
        double magnitude = Math.exp(-sigma / rateHz);
        double zRe = magnitude * Math.cos(omega / rateHz);
        double zIm = magnitude * Math.sin(omega / rateHz);
        double last = Math.exp(-sigma * length / rateHz);
        double lastRe = last * Math.cos(omega * length / rateHz);
        double lastIm = last * Math.sin(omega * length / rateHz);
        int bins = bins();
        double[] plus = new double[4];
        double[] minus = new double[4];
        for (int i = 0; i < bins; i++) {
            value(zRe, zIm, lastRe, lastIm, i, plus);
            value(zRe, -zIm, lastRe, -lastIm, i, minus);
            // cosine (g+h)/2 and sine (g−h)/(2i)
            put(columns[0], i, bins, (plus[0] + minus[0]) / 2, (plus[1] + minus[1]) / 2);
            put(columns[1], i, bins, (plus[1] - minus[1]) / 2, -(plus[0] - minus[0]) / 2);
            // dz/dσ = −z/rate for both
            double pRe = plus[2] / rateHz;
            double pIm = plus[3] / rateHz;
            double mRe = minus[2] / rateHz;
            double mIm = minus[3] / rateHz;
            put(columns[2], i, bins, -(pRe + mRe) / 2, -(pIm + mIm) / 2);
            put(columns[3], i, bins, -(pIm - mIm) / 2, (pRe - mRe) / 2);
        }
    }

    /**
     * Adds what a decaying sine contributes: exp(−σt)·(cosine·cos ωt + sine·sin ωt).
     *
     * @param omega ω, rad/s, greater than 0
     * @param sigma σ, 1/s, greater than 0
     * @param cosine strength of the cosine
     * @param sine strength of the sine
     * @param rows shape [2·bins], changed: real parts first, imaginary parts after them
     */
    public void add(double omega, double sigma, double cosine, double sine, double[] rows) {
        double magnitude = Math.exp(-sigma / rateHz);
        double zRe = magnitude * Math.cos(omega / rateHz);
        double zIm = magnitude * Math.sin(omega / rateHz);
        double last = Math.exp(-sigma * length / rateHz);
        double nRe = 1 - last * Math.cos(omega * length / rateHz);
        double nIm = -last * Math.sin(omega * length / rateHz);
        // a/(1−zw) + ā/(1−z̄w) with a = (cosine − i·sine)/2·(1−zᴺ)
        double aRe = (cosine * nRe + sine * nIm) / 2;
        double aIm = (cosine * nIm - sine * nRe) / 2;
        int bins = bins();
        for (int i = 0; i < bins; i++) {
            double re = 1 - zRe * wRe[i];
            double im = zRe * wIm[i];
            double dRe = re + zIm * wIm[i];
            double dIm = -im - zIm * wRe[i];
            double eRe = re - zIm * wIm[i];
            double eIm = -im + zIm * wRe[i];
            double d = 1 / (dRe * dRe + dIm * dIm);
            double e = 1 / (eRe * eRe + eIm * eIm);
            rows[i] += d * (aRe * dRe + aIm * dIm) + e * (aRe * eRe - aIm * eIm);
            rows[i + bins] += d * (aIm * dRe - aRe * dIm) - e * (aIm * eRe + aRe * eIm);
        }
    }

    private static void put(double[] column, int i, int bins, double re, double im) {
        column[i] = re;
        column[i + bins] = im;
    }

    /** g(z) into out[0..1] and z·dg/dz into out[2..3] for bin i. */
    private void value(double zRe, double zIm, double lastRe, double lastIm, int i, double[] out) {
        double zwRe = zRe * wRe[i] - zIm * wIm[i];
        double zwIm = zRe * wIm[i] + zIm * wRe[i];
        double dRe = 1 - zwRe;
        double dIm = -zwIm;
        double norm = dRe * dRe + dIm * dIm;
        if (norm < 1e-24) { // a steady tone exactly on this bin: the sum of N ones
            out[0] = length;
            out[1] = 0;
            out[2] = 0.5 * length * (length - 1.0);
            out[3] = 0;
            return;
        }
        double nRe = 1 - lastRe;
        double nIm = -lastIm;
        // 1/(1−z·w)
        double iRe = dRe / norm;
        double iIm = -dIm / norm;
        out[0] = nRe * iRe - nIm * iIm;
        out[1] = nIm * iRe + nRe * iIm;
        // z·dg/dz = (−N·zᴺ + g·z·w)/(1−z·w)
        double tRe = -length * lastRe + out[0] * zwRe - out[1] * zwIm;
        double tIm = -length * lastIm + out[0] * zwIm + out[1] * zwRe;
        out[2] = tRe * iRe - tIm * iIm;
        out[3] = tIm * iRe + tRe * iIm;
    }
}
