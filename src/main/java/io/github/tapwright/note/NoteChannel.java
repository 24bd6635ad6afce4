package io.github.tapwright.note;

import io.github.tapwright.signal.ChannelReader;
import io.github.tapwright.signal.Decimator;
import io.github.tapwright.signal.FullScaleRun;
import io.github.tapwright.signal.GrowingSignal;

/** Gathers one channel of a recording while it streams by. */
final class NoteChannel implements ChannelReader {

    private static final double TAIL_SECONDS = 2;

    private final Decimator decimator;
    private final int longest;
    private final double[] ring;
    private final GrowingSignal kept = new GrowingSignal();
    private final FullScaleRun fullScale = new FullScaleRun();
    private double[] signal = new double[0];
    private long taken;
    private double energy;

    NoteChannel(double rateHz, int factor, double keptBandHz) {
        decimator = new Decimator(rateHz, factor, keptBandHz);
        longest = (int) Math.ceil(NoteTrack.LONGEST_SECONDS * rateHz / factor);
        ring = new double[(int) Math.ceil(TAIL_SECONDS * rateHz)];
    }

    @Override
    public void append(double[] block, int n) {
        for (int i = 0; i < n; i++) {
            double x = block[i];
            energy += x * x;
            fullScale.take(x);
            ring[(int) (taken++ % ring.length)] = x;
        }
        keep(decimator.process(block, n));
    }

    @Override
    public void finish() {
        keep(decimator.finish());
        signal = kept.trimmed();
    }

    private void keep(double[] more) {
        kept.append(more, Math.min(more.length, longest - kept.length()));
    }

    @Override
    public double energy() {
        return energy;
    }

    long clippedSamples() {
        return fullScale.clippedSamples();
    }

    double[] signal() {
        return signal;
    }

    /** The last samples in order. */
    double[] tail() {
        int n = (int) Math.min(taken, ring.length);
        double[] tail = new double[n];
        for (int i = 0; i < n; i++) {
            tail[i] = ring[(int) ((taken - n + i) % ring.length)];
        }
        return tail;
    }
}
