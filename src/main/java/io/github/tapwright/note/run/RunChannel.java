package io.github.tapwright.note.run;

import io.github.tapwright.signal.ChannelReader;
import io.github.tapwright.signal.Decimator;
import io.github.tapwright.signal.GrowingSignal;

/** Gathers one channel of a run, decimated to the band in which attacks are looked for. */
final class RunChannel implements ChannelReader {

    private final Decimator decimator;
    private final GrowingSignal kept = new GrowingSignal();
    private double energy;

    RunChannel(Decimator decimator) {
        this.decimator = decimator;
    }

    @Override
    public void append(double[] block, int count) {
        double sum = energy;
        for (int i = 0; i < count; i++) {
            sum += block[i] * block[i];
        }
        energy = sum;
        keep(decimator.process(block, count));
    }

    @Override
    public void finish() {
        keep(decimator.finish());
    }

    @Override
    public double energy() {
        return energy;
    }

    double[] signal() {
        return kept.joined();
    }

    private void keep(double[] more) {
        kept.append(more, more.length);
    }
}
