package io.github.tapwright.tap;

import io.github.tapwright.signal.ChannelReader;
import io.github.tapwright.signal.Decimator;
import io.github.tapwright.signal.GrowingSignal;

/** Gathers one channel of a recording while it streams by. */
final class ChannelTrack implements ChannelReader {

    private final Decimator decimator;
    private final PeakFrames peaks;
    private final GrowingSignal signal = new GrowingSignal();
    private double energy;

    ChannelTrack(double rateHz, int factor, double keptBandHz) {
        decimator = new Decimator(rateHz, factor, keptBandHz);
        peaks = new PeakFrames(rateHz);
    }

    @Override
    public void append(double[] block, int n) {
        for (int i = 0; i < n; i++) {
            energy += block[i] * block[i];
        }
        peaks.append(block, n);
        keep(decimator.process(block, n));
    }

    @Override
    public void finish() {
        keep(decimator.finish());
        peaks.finish();
    }

    private void keep(double[] more) {
        signal.append(more, more.length);
    }

    @Override
    public double energy() {
        return energy;
    }

    int filterReach() {
        return decimator.reach();
    }

    double[] signal() {
        return signal.joined();
    }

    PeakFrames peaks() {
        return peaks;
    }
}
