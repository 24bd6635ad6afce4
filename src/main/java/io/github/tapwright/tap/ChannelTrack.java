package io.github.tapwright.tap;

import io.github.tapwright.signal.Decimator;
import java.util.Arrays;

/** Gathers one channel of a recording while it streams by. */
final class ChannelTrack {

    private final Decimator decimator;
    private final PeakFrames peaks;
    private double[] signal = new double[4096];
    private int length;
    private double energy;

    ChannelTrack(double rateHz, int factor, double keptBandHz) {
        decimator = new Decimator(rateHz, factor, keptBandHz);
        peaks = new PeakFrames(rateHz);
    }

    void append(double[] block, int n) {
        for (int i = 0; i < n; i++) {
            energy += block[i] * block[i];
        }
        peaks.append(block, n);
        keep(decimator.process(block, n));
    }

    void finish() {
        keep(decimator.finish());
        peaks.finish();
        signal = Arrays.copyOf(signal, length);
    }

    private void keep(double[] more) {
        if (length + more.length > signal.length) {
            signal = Arrays.copyOf(signal, Math.max(length + more.length, 2 * signal.length));
        }
        System.arraycopy(more, 0, signal, length, more.length);
        length += more.length;
    }

    double energy() {
        return energy;
    }

    int filterReach() {
        return decimator.reach();
    }

    double[] signal() {
        return signal;
    }

    PeakFrames peaks() {
        return peaks;
    }
}
