package io.github.tapwright.signal;

/**
 * How the two ends of a stretch of signal are faded before it is transformed.
 *
 * <p>All but the triangle are sums of cosines, w(x) = a0 − a1·cos(2πx) + a2·cos(4πx) − a3·cos(6πx) + a4·cos(8πx)
 * with x from 0 to 1 over the stretch; the triangle is w(x) = 1 − |2x − 1|. The largest value is 1, but for the
 * flat top, whose mean is 1. Source: [Harris1978]; the flat top is HFT95 of [Heinzel2002].
 *
 * <p>A window of length N is sampled at x = n/N, as if the N-th sample were the first of the next period (Harris:
 * "DFT-even"), as a spectrum wants it; all figures of merit are meant for that.
 */
public enum Window {
    /** No fading at all: the narrowest line, and the worst neighbour. */
    RECTANGULAR(1, 0, 0, 0, 0),
    /** Straight up and straight down. */
    TRIANGLE(0, 0, 0, 0, 0) {
        @Override
        double at(double x) {
            return 1 - Math.abs(2 * x - 1);
        }
    },
    /** One raised cosine. */
    HANN(0.5, 0.5, 0, 0, 0),
    /** A raised cosine on a step that all but cancels the first side lobe. */
    HAMMING(0.54, 0.46, 0, 0, 0),
    /** Three terms, rounded to two digits so that both ends go to zero. */
    BLACKMAN(0.42, 0.5, 0.08, 0, 0),
    /** Three terms with zeros placed on the third and fourth side lobe. */
    EXACT_BLACKMAN(7938 / 18608.0, 9240 / 18608.0, 1430 / 18608.0, 0, 0),
    /** Four terms, chosen for low side lobes: −92 dB. */
    BLACKMAN_HARRIS(0.35875, 0.48829, 0.14128, 0.01168, 0),
    /** Five terms for reading levels: between bins a tone is never wrong by more than 0.0044 dB. */
    FLAT_TOP(1, 1.9383379, 1.3045202, 0.4028270, 0.0350665);

    private final double a0;
    private final double a1;
    private final double a2;
    private final double a3;
    private final double a4;

    Window(double a0, double a1, double a2, double a3, double a4) {
        this.a0 = a0;
        this.a1 = a1;
        this.a2 = a2;
        this.a3 = a3;
        this.a4 = a4;
    }

    /** Value at x, from 0 at the first sample to 1 at the end. */
    double at(double x) {
        double turn = 2 * Math.PI * x;
        return a0 - a1 * Math.cos(turn) + a2 * Math.cos(2 * turn) - a3 * Math.cos(3 * turn) + a4 * Math.cos(4 * turn);
    }

    /**
     * The window for a spectrum, x = n/N.
     *
     * @param length N, at least 2
     * @return shape [N]
     */
    public double[] periodic(int length) {
        if (length < 2) {
            throw new IllegalArgumentException("a window needs two samples at least, had " + length);
        }
        double[] samples = new double[length];
        for (int n = 0; n < length; n++) {
            samples[n] = at((double) n / length);
        }
        return samples;
    }

    /**
     * What this window does to lines and noise, measured on its periodic samples.
     *
     * @param length N, a multiple of 4, at least 64
     * @return figures, which hardly depend on N once it is some hundred
     */
    public WindowFigures figures(int length) {
        return WindowFigures.of(periodic(length));
    }
}
