package io.github.tapwright.signal;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Keeps every D-th sample of a low-pass filtered signal, block by block.
 *
 * <p>The filter is a linear-phase FIR, a sinc under a Kaiser window of 90 dB: flat within 0.001 dB up to
 * the pass edge, and 90 dB down from the frequency whose image would fall below the pass edge
 * (new rate − pass edge). What folds between the pass edge and half the new rate is not for use. Output m
 * belongs to input time m·D: the filter's delay is taken out, so an onset stays where it was. Source:
 * [OppenheimSchafer2010], sec. 7.5.3 (Kaiser's length and shape formulas).
 *
 * <p>The two edges lie evenly about half the new rate, so the sinc crosses zero at every D-th tap but the middle one. Those taps are not
 * worked out: at D = 2 that is half of them.
 */
public final class Decimator {

    private static final double STOP_BAND_DB = 90;

    private final int factor;
    private final int length;
    private final int[] lags;
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
        double[] all = design(rateHz, factor, passEdgeHz);
        this.length = all.length;
        this.lags = IntStream.range(0, length)
                .filter(i -> i == length / 2 || (i - length / 2) % factor != 0)
                .toArray();
        this.taps = IntStream.of(lags).mapToDouble(i -> all[i]).toArray();
        this.history = new double[length + 65536];
        this.filled = length / 2; // silence before the first sample
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
        return length / 2;
    }

    /**
     * Takes the next samples and gives the outputs they complete.
     *
     * @param block input samples
     * @param count how many of them count, at most 32,768
     * @return the finished outputs, possibly none
     */
    public double[] process(double[] block, int count) {
        System.arraycopy(block, 0, history, filled, count);
        filled += count;
        consumed += count;
        return drain();
    }

    /**
     * Ends the signal with silence and gives the last outputs.
     *
     * @return outputs up to the last input sample
     */
    public double[] finish() {
        long wanted = (consumed + factor - 1) / factor;
        Arrays.fill(history, filled, filled + length, 0);
        filled += length;
        double[] rest = drain();
        long excess = nextOutput - wanted;
        return Arrays.copyOf(rest, (int) Math.max(0, rest.length - excess));
    }

    /**
     * Eight sums at once need not wait for each other, and share the walk through the taps; each adds in the same order as it would
     * alone.
     */
    private void eightOutputs(double[] out, int m) {
        int step = factor;
        double[] x = history;
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        double e = 0;
        double f = 0;
        double g = 0;
        double h = 0;
        int start = m * step;
        for (int i = 0; i < taps.length; i++) {
            double tap = taps[i];
            int at = start + lags[i];
            a += tap * x[at];
            b += tap * x[at += step];
            c += tap * x[at += step];
            d += tap * x[at += step];
            e += tap * x[at += step];
            f += tap * x[at += step];
            g += tap * x[at += step];
            h += tap * x[at += step];
        }
        out[m] = a;
        out[m + 1] = b;
        out[m + 2] = c;
        out[m + 3] = d;
        out[m + 4] = e;
        out[m + 5] = f;
        out[m + 6] = g;
        out[m + 7] = h;
    }

    private double[] drain() {
        int count = Math.max(0, (filled - length) / factor + (filled >= length ? 1 : 0));
        double[] out = new double[count];
        int m = 0;
        for (; m + 7 < count; m += 8) {
            eightOutputs(out, m);
        }
        for (; m < count; m++) {
            double sum = 0;
            int start = m * factor;
            for (int i = 0; i < taps.length; i++) {
                sum += taps[i] * history[start + lags[i]];
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
