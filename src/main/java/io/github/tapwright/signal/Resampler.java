package io.github.tapwright.signal;

import java.util.Arrays;

/**
 * A signal at another rate: L/M times its own, L and M whole numbers, block by block.
 *
 * <p>y[m] = Σ x[n]·h(m·M/L − n), with h a sinc under a Kaiser window of 100 dB: flat within 0.001 dB up to
 * 5/6 of the lower of the two half rates, 100 dB down from 7/6 of it, so what lies within a sixth of that half
 * rate may fold and is not for use. Output m belongs to input time m·M/L: the delay is taken out. Source:
 * [OppenheimSchafer2010], sec. 4.6 (changing the rate by a rational factor) and 7.5.3 (the window).
 */
public final class Resampler {

    private static final double STOP_BAND_DB = 100;
    private static final double MARGIN = 1.0 / 6;

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
        if (up < 1 || down < 1) {
            throw new IllegalArgumentException("a change of rate needs whole factors of 1 or more");
        }
        this.up = up;
        this.down = down;
        double lowerHalfRate = 0.5 * Math.min(1, (double) up / down); // in cycles per input sample
        KaiserSinc response = new KaiserSinc((1 - MARGIN) * lowerHalfRate, (1 + MARGIN) * lowerHalfRate, STOP_BAND_DB);
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
        for (int m = 0; m < out.length; m++) {
            out[m] = output(produced + m);
        }
        produced += out.length;
        forget(produced * down / up - reach);
        return out;
    }

    private double output(long m) {
        long centre = m * down / up;
        double[] weights = phases[(int) (m * down % up)];
        int start = (int) (centre - reach - firstKept);
        double sum = 0;
        for (int k = 0; k < weights.length; k++) {
            sum += weights[k] * history[start + k];
        }
        return sum;
    }

    private void forget(long firstNeeded) {
        int drop = (int) Math.max(0, Math.min(filled, firstNeeded - firstKept));
        System.arraycopy(history, drop, history, 0, filled - drop);
        filled -= drop;
        firstKept += drop;
    }
}
