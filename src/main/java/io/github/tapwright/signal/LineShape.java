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
        // g, z·dg/dz of z lie in the columns' first halves while those of z̄, the other way up, lie in the second
        values(zRe, zIm, lastRe, lastIm, columns, 0);
        values(zRe, -zIm, lastRe, -lastIm, columns, bins());
        combine(columns);
    }

    /** Cosine (g+h)/2 and sine (g−h)/(2i) of g at z and h at z̄, and their derivatives with dz/dσ = −z/rate for both. */
    private void combine(double[][] columns) {
        double[] cosine = columns[0];
        double[] sine = columns[1];
        double[] cosineBySigma = columns[2];
        double[] sineBySigma = columns[3];
        int bins = bins();
        double slope = -0.5 / rateHz; // no division in the loop, where it would cost more than all the rest
        for (int i = 0, j = bins; i < bins; i++, j++) {
            double gRe = cosine[i];
            double gIm = sine[i];
            double hRe = cosine[j];
            double hIm = sine[j];
            cosine[i] = 0.5 * (gRe + hRe);
            cosine[j] = 0.5 * (gIm + hIm);
            sine[i] = 0.5 * (gIm - hIm);
            sine[j] = 0.5 * (hRe - gRe);
            double pRe = cosineBySigma[i];
            double pIm = sineBySigma[i];
            double mRe = cosineBySigma[j];
            double mIm = sineBySigma[j];
            cosineBySigma[i] = slope * (pRe + mRe);
            cosineBySigma[j] = slope * (pIm + mIm);
            sineBySigma[i] = slope * (pIm - mIm);
            sineBySigma[j] = slope * (mRe - pRe);
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

    /** For every bin g(z) into out[0], out[1] and z·dg/dz into out[2], out[3], from a place on. */
    private void values(double zRe, double zIm, double lastRe, double lastIm, double[][] out, int from) {
        double nRe = 1 - lastRe;
        double nIm = -lastIm;
        double[] gRe = out[0];
        double[] gIm = out[1];
        double[] sRe = out[2];
        double[] sIm = out[3];
        for (int i = 0; i < wRe.length; i++) {
            double zwRe = zRe * wRe[i] - zIm * wIm[i];
            double zwIm = zRe * wIm[i] + zIm * wRe[i];
            double dRe = 1 - zwRe;
            double dIm = -zwIm;
            double norm = dRe * dRe + dIm * dIm;
            int at = from + i;
            if (norm < 1e-24) { // a steady tone exactly on this bin: the sum of N ones
                gRe[at] = length;
                gIm[at] = 0;
                sRe[at] = 0.5 * length * (length - 1.0);
                sIm[at] = 0;
                continue;
            }
            // 1/(1−z·w)
            double inverse = 1 / norm;
            double iRe = dRe * inverse;
            double iIm = -dIm * inverse;
            double re = nRe * iRe - nIm * iIm;
            double im = nIm * iRe + nRe * iIm;
            gRe[at] = re;
            gIm[at] = im;
            // z·dg/dz = (−N·zᴺ + g·z·w)/(1−z·w)
            double tRe = -length * lastRe + re * zwRe - im * zwIm;
            double tIm = -length * lastIm + re * zwIm + im * zwRe;
            sRe[at] = tRe * iRe - tIm * iIm;
            sIm[at] = tIm * iRe + tRe * iIm;
        }
    }
}
