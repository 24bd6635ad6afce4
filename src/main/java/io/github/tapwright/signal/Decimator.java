package io.github.tapwright.signal;

import java.util.Arrays;

/**
 * Keeps every D-th sample of a low-pass filtered signal, block by block.
 *
 * <p>The filter is a linear-phase FIR, a sinc under a Kaiser window of 90 dB: flat within 0.001 dB up to
 * the pass edge, and 90 dB down from the frequency whose image would fall below the pass edge
 * (new rate − pass edge). What folds between the pass edge and half the new rate is not for use. Output m
 * belongs to input time m·D: the filter's delay is taken out, so an onset stays where it was. Source:
 * [OppenheimSchafer2010], sec. 7.5.3 (Kaiser's length and shape formulas).
 */
public final class Decimator {

    private static final double STOP_BAND_DB = 90;

    private final int factor;
    private final double[] taps;
    private final double[] history;
    private int filled;
    private long nextOutput;
    private long consumed;

    /**
     * Designs the filter.
     *
     * @param rateHz input rate
     * @param factor D, at least 1
     * @param passEdgeHz highest frequency to keep intact, below half the output rate
     */
    public Decimator(double rateHz, int factor, double passEdgeHz) {
        this.factor = factor;
        this.taps = design(rateHz, factor, passEdgeHz);
        this.history = new double[taps.length + 65536];
        this.filled = taps.length / 2; // silence before the first sample
    }

    private static double[] design(double rateHz, int factor, double passEdgeHz) {
        double stopEdgeHz = rateHz / factor - passEdgeHz;
        if (factor == 1) {
            return new double[] {1};
        }
        if (stopEdgeHz <= passEdgeHz) {
            throw new IllegalArgumentException("the new rate leaves no room above " + passEdgeHz + " Hz");
        }
        double width = 2 * Math.PI * (stopEdgeHz - passEdgeHz) / rateHz;
        int half = (int) Math.ceil((STOP_BAND_DB - 8) / (2.285 * width) / 2);
        double beta = 0.1102 * (STOP_BAND_DB - 8.7);
        double cut = (stopEdgeHz + passEdgeHz) / rateHz; // cycles per two samples
        double[] h = new double[2 * half + 1];
        double sum = 0;
        for (int i = -half; i <= half; i++) {
            double sinc = i == 0 ? cut : Math.sin(Math.PI * cut * i) / (Math.PI * i);
            double r = i / (half + 1.0);
            h[i + half] = sinc * KaiserSinc.bessel0(beta * Math.sqrt(1 - r * r)) / KaiserSinc.bessel0(beta);
            sum += h[i + half];
        }
        for (int i = 0; i < h.length; i++) {
            h[i] /= sum;
        }
        return h;
    }

    /**
     * How far the filter reaches to either side of an output sample.
     *
     * @return input samples
     */
    public int reach() {
        return taps.length / 2;
    }

    /**
     * Takes the next samples and gives the outputs they complete.
     *
     * @param block input samples
     * @param length how many of them count, at most 32,768
     * @return the finished outputs, possibly none
     */
    public double[] process(double[] block, int length) {
        System.arraycopy(block, 0, history, filled, length);
        filled += length;
        consumed += length;
        return drain();
    }

    /**
     * Ends the signal with silence and gives the last outputs.
     *
     * @return outputs up to the last input sample
     */
    public double[] finish() {
        long wanted = (consumed + factor - 1) / factor;
        Arrays.fill(history, filled, filled + taps.length, 0);
        filled += taps.length;
        double[] rest = drain();
        long excess = nextOutput - wanted;
        return Arrays.copyOf(rest, (int) Math.max(0, rest.length - excess));
    }

    /** Four sums at once need not wait for each other; each adds in the same order as it would alone. */
    private void fourOutputs(double[] out, int m) {
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        int start = m * factor;
        for (int i = 0; i < taps.length; i++) {
            double tap = taps[i];
            a += tap * history[start + i];
            b += tap * history[start + factor + i];
            c += tap * history[start + 2 * factor + i];
            d += tap * history[start + 3 * factor + i];
        }
        out[m] = a;
        out[m + 1] = b;
        out[m + 2] = c;
        out[m + 3] = d;
    }

    private double[] drain() {
        int count = Math.max(0, (filled - taps.length) / factor + (filled >= taps.length ? 1 : 0));
        double[] out = new double[count];
        int m = 0;
        for (; m + 3 < count; m += 4) {
            fourOutputs(out, m);
        }
        for (; m < count; m++) {
            double sum = 0;
            int start = m * factor;
            for (int i = 0; i < taps.length; i++) {
                sum += taps[i] * history[start + i];
            }
            out[m] = sum;
        }
        int used = count * factor;
        System.arraycopy(history, used, history, 0, filled - used);
        filled -= used;
        nextOutput += count;
        return out;
    }
}
