package io.github.tapwright.note;

/**
 * The exact spectrum of a decaying sine over a finite stretch, and its derivatives.
 *
 * <p>A real decaying sine is a·Re(zⁿ) + b·Im(zⁿ). With z = exp((−σ+iω)/rate) and w = exp(−2πi·k/N), the discrete
 * transform of zⁿ over N samples is g(z) = (1−zᴺ)/(1−z·w); the cosine's is (g(z)+g(z̄))/2, the sine's
 * (g(z)−g(z̄))/(2i). Cutting the decay at N samples is part of the formula, so nothing leaks. As zᴺ does not depend
 * on k, far lines are smooth over the bins whatever their phase at the cut. Derived here.
 */
final class LineShape {

    private final double[] wRe;
    private final double[] wIm;
    private final double rateHz;
    private final int length;

    /**
     * Prepares a run of bins.
     *
     * @param firstBin first bin k
     * @param bins how many bins
     * @param length N, samples of the stretch
     * @param rateHz samples per second
     */
    LineShape(int firstBin, int bins, int length, double rateHz) {
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

    int bins() {
        return wRe.length;
    }

    /**
     * The four columns of a tone: cosine, sine, then both differentiated by σ. The derivative of the cosine by ω is
     * the sine's by σ, that of the sine is minus the cosine's by σ.
     *
     * @return shape [4][2·bins]: real parts first, imaginary parts after them
     */
    double[][] columns(DecayingTone tone) {
        double[][] columns = new double[4][2 * bins()];
        double magnitude = Math.exp(-tone.sigma() / rateHz);
        double zRe = magnitude * Math.cos(tone.omega() / rateHz);
        double zIm = magnitude * Math.sin(tone.omega() / rateHz);
        double last = Math.exp(-tone.sigma() * length / rateHz);
        double lastRe = last * Math.cos(tone.omega() * length / rateHz);
        double lastIm = last * Math.sin(tone.omega() * length / rateHz);
        int bins = bins();
        double[] g = new double[4];
        double[] h = new double[4];
        for (int i = 0; i < bins; i++) {
            value(zRe, zIm, lastRe, lastIm, i, g);
            value(zRe, -zIm, lastRe, -lastIm, i, h);
            put(columns[0], i, (g[0] + h[0]) / 2, (g[1] + h[1]) / 2);
            put(columns[1], i, (g[1] - h[1]) / 2, -(g[0] - h[0]) / 2);
            // dz/dσ = −z/rate for both
            put(columns[2], i, -(g[2] + h[2]) / (2 * rateHz), -(g[3] + h[3]) / (2 * rateHz));
            put(columns[3], i, -(g[3] - h[3]) / (2 * rateHz), (g[2] - h[2]) / (2 * rateHz));
        }
        return columns;
    }

    private void put(double[] column, int i, double re, double im) {
        column[i] = re;
        column[i + bins()] = im;
    }

    /** g(z) into out[0..1] and z·dg/dz into out[2..3] for bin i. */
    private void value(double zRe, double zIm, double lastRe, double lastIm, int i, double[] out) {
        double zwRe = zRe * wRe[i] - zIm * wIm[i];
        double zwIm = zRe * wIm[i] + zIm * wRe[i];
        double dRe = 1 - zwRe;
        double dIm = -zwIm;
        double norm = Math.max(dRe * dRe + dIm * dIm, 1e-30);
        double nRe = 1 - lastRe;
        double nIm = -lastIm;
        out[0] = (nRe * dRe + nIm * dIm) / norm;
        out[1] = (nIm * dRe - nRe * dIm) / norm;
        // z·dg/dz = (−N·zᴺ + g·z·w)/(1−z·w)
        double tRe = -length * lastRe + out[0] * zwRe - out[1] * zwIm;
        double tIm = -length * lastIm + out[0] * zwIm + out[1] * zwRe;
        out[2] = (tRe * dRe + tIm * dIm) / norm;
        out[3] = (tIm * dRe - tRe * dIm) / norm;
    }
}
