package io.github.tapwright.signal;

import java.util.Arrays;

/**
 * A signal at another rate: L/M times its own, L and M whole numbers, block by block.
 *
 * <p>y[m] = Σ x[n]·h(m·M/L − n), with h a sinc under a Kaiser window of 100 dB: flat within 0.001 dB up to
 * 1 − d of the lower of the two half rates, 100 dB down from 1 + d of it, so what lies within d of that half rate
 * may fold and is not for use; d is 1/6 unless given. Output m belongs to input time m·M/L: the delay is taken out.
 * Source: [OppenheimSchafer2010], sec. 4.6 (changing the rate by a rational factor) and 7.5.3 (the window).
 */
public final class Resampler {

    private static final double STOP_BAND_DB = 100;
    private static final double USUAL_MARGIN = 1.0 / 6;

    private final int up;
    private final int down;
    private final int reach;
    private final double[][] phases;
    private double[] history;
    private int filled;
    private long firstKept;
    private long consumed;
    private long produced;

    /**
     * Plans the change of rate.
     *
     * @param up L, at least 1
     * @param down M, at least 1
     */
    public Resampler(int up, int down) {
        this(up, down, USUAL_MARGIN);
    }

    /**
     * Plans a change of rate for a signal that leaves room below the half rate, which makes it quicker.
     *
     * @param up L, at least 1
     * @param down M, at least 1
     * @param margin d, above 0 and below 1: how much of the lower half rate on either side of it is given up
     */
    public Resampler(int up, int down, double margin) {
        if (up < 1 || down < 1) {
            throw new IllegalArgumentException("a change of rate needs whole factors of 1 or more");
        }
        if (!(margin > 0 && margin < 1)) {
            throw new IllegalArgumentException("a change of rate needs a margin between 0 and 1");
        }
        this.up = up;
        this.down = down;
        double lowerHalfRate = 0.5 * Math.min(1, (double) up / down); // in cycles per input sample
        KaiserSinc response = new KaiserSinc((1 - margin) * lowerHalfRate, (1 + margin) * lowerHalfRate, STOP_BAND_DB);
        this.reach = up == down ? 0 : (int) Math.ceil(response.reachSeconds()); // 1:1 leaves the samples alone
        this.phases = new double[up][2 * reach + 1];
        for (int p = 0; p < up; p++) {
            fill(phases[p], response, (double) p / up);
        }
        this.history = new double[2 * reach + 1];
        this.filled = reach; // silence before the first sample
        this.firstKept = -reach;
    }

    /** The weights for an output that lies {@code fraction} of a sample after an input; they sum to 1. */
    private void fill(double[] weights, KaiserSinc response, double fraction) {
        double sum = 0;
        for (int k = -reach; k <= reach; k++) {
            weights[k + reach] = response.at(fraction - k);
            sum += weights[k + reach];
        }
        for (int k = 0; k < weights.length; k++) {
            weights[k] /= sum;
        }
    }

    /**
     * Takes the next samples and gives the outputs they complete.
     *
     * @param block input samples, left unchanged
     * @param count how many of them count
     * @return the finished outputs, possibly none
     */
    public double[] process(double[] block, int count) {
        makeRoom(count);
        System.arraycopy(block, 0, history, filled, count);
        filled += count;
        consumed += count;
        return drain(Long.MAX_VALUE);
    }

    /**
     * Ends the signal with silence and gives the last outputs.
     *
     * @return outputs up to the last input sample
     */
    public double[] finish() {
        makeRoom(reach);
        Arrays.fill(history, filled, filled + reach, 0);
        filled += reach;
        return drain((consumed * up + down - 1) / down);
    }

    private void makeRoom(int count) {
        if (filled + count > history.length) {
            history = Arrays.copyOf(history, filled + count);
        }
    }

    private double[] drain(long wanted) {
        long lastCentre = firstKept + filled - 1 - reach; // the last input with its whole neighbourhood known
        long ready = lastCentre < 0 ? 0 : ((lastCentre + 1) * up - 1) / down + 1;
        double[] out = new double[(int) Math.max(0, Math.min(wanted, ready) - produced)];
        if (down == 1) {
            fillBetween(out);
        } else {
            fillOneByOne(out);
        }
        produced += out.length;
        forget(produced * down / up - reach);
        return out;
    }

    private void fillOneByOne(double[] out) {
        for (int m = 0; m < out.length; m++) {
            long input = (produced + m) * down;
            out[m] = weightedSum(phases[(int) (input % up)], start(input / up));
        }
    }

    /** With M = 1 outputs and inputs keep step: each input stays, and those between follow from one neighbourhood. */
    private void fillBetween(double[] out) {
        int inputs = out.length / up;
        int first = start(produced / up);
        double[] sums = new double[inputs];
        for (int p = 0; p < up; p++) {
            if (p == 0) {
                System.arraycopy(history, first + reach, sums, 0, inputs);
            } else {
                sum(phases[p], first, sums);
            }
            for (int n = 0; n < inputs; n++) {
                out[n * up + p] = sums[n];
            }
        }
    }

    /** Weighted sums at consecutive inputs, four weights at a time to fetch and store each sum less often. */
    private void sum(double[] weights, int start, double[] sums) {
        Arrays.fill(sums, 0);
        double[] h = history;
        int k = 0;
        for (; k + 3 < weights.length; k += 4) {
            double a = weights[k];
            double b = weights[k + 1];
            double c = weights[k + 2];
            double d = weights[k + 3];
            int s = start + k;
            for (int n = 0; n < sums.length; n++) {
                sums[n] += a * h[s + n] + b * h[s + n + 1] + (c * h[s + n + 2] + d * h[s + n + 3]);
            }
        }
        for (; k < weights.length; k++) {
            double a = weights[k];
            int s = start + k;
            for (int n = 0; n < sums.length; n++) {
                sums[n] += a * h[s + n];
            }
        }
    }

    private int start(long centre) {
        return (int) (centre - reach - firstKept);
    }

    /** Four sums side by side, since each waits for its own last addition. */
    private double weightedSum(double[] weights, int start) {
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        int k = 0;
        for (; k + 3 < weights.length; k += 4) {
            a += weights[k] * history[start + k];
            b += weights[k + 1] * history[start + k + 1];
            c += weights[k + 2] * history[start + k + 2];
            d += weights[k + 3] * history[start + k + 3];
        }
        for (; k < weights.length; k++) {
            a += weights[k] * history[start + k];
        }
        return a + b + (c + d);
    }

    private void forget(long firstNeeded) {
        int drop = (int) Math.max(0, Math.min(filled, firstNeeded - firstKept));
        System.arraycopy(history, drop, history, 0, filled - drop);
        filled -= drop;
        firstKept += drop;
    }
}
