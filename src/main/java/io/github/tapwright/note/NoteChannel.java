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
        double sum = energy;
        for (int i = 0; i < n; i++) {
            double x = block[i];
            sum += x * x;
            fullScale.take(x);
        }
        energy = sum;
        remember(block, n);
        keep(decimator.process(block, n));
    }

    /** The ring holds the last samples, the next one's place being {@code taken} modulo its length. */
    private void remember(double[] block, int n) {
        for (int done = 0; done < n; ) {
            int at = (int) (taken % ring.length);
            int run = Math.min(n - done, ring.length - at);
            System.arraycopy(block, done, ring, at, run);
            done += run;
            taken += run;
        }
    }

    @Override
    public void finish() {
        keep(decimator.finish());
        signal = kept.joined();
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
        int first = (int) ((taken - n) % ring.length);
        int run = Math.min(n, ring.length - first);
        double[] tail = new double[n];
        System.arraycopy(ring, first, tail, 0, run);
        System.arraycopy(ring, 0, tail, run, n - run);
        return tail;
    }
}
