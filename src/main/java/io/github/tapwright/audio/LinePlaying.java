package io.github.tapwright.audio;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.sitting.live.PlayingSound;
import javax.sound.sampled.SourceDataLine;

/** A line that is being played to, block by block, by a thread of its own. */
final class LinePlaying implements PlayingSound {

    private static final double BLOCK_SECONDS = 0.02;
    private static final double FADE_SECONDS = 0.02;
    private static final int FULL_SCALE = Short.MAX_VALUE;

    private final SourceDataLine line;
    private final double[][] channels;
    private final double rateHz;
    private final Thread player;
    private volatile double wantedGain;
    private volatile boolean stopping;
    private volatile boolean over;
    private volatile double heardSeconds;
    private double gain;

    LinePlaying(SourceDataLine line, Recording sound, int channelCount, double gainDb) {
        this.line = line;
        this.rateHz = sound.sampleRate().hertz();
        this.channels = new double[channelCount][];
        for (int c = 0; c < channelCount; c++) {
            channels[c] = sound.channel(c);
        }
        this.wantedGain = factor(gainDb);
        this.player = new Thread(this::play, "tapwright-loudspeaker");
        player.setDaemon(true);
        player.start();
    }

    private static double factor(double gainDb) {
        return Math.pow(10, Math.min(0, gainDb) / 20);
    }

    private void play() {
        int length = channels[0].length;
        int block = (int) (BLOCK_SECONDS * rateHz);
        try {
            line.start();
            for (int from = 0; from < length && !stopping; from += block) {
                byte[] bytes = bytes(from, Math.min(length, from + block));
                line.write(bytes, 0, bytes.length);
                heardSeconds = line.getLongFramePosition() / rateHz;
            }
            if (!stopping) {
                line.drain();
                heardSeconds = length / rateHz;
            }
        } finally {
            line.close();
            over = true;
        }
    }

    /** The samples between two positions; the gain moves over a fade's length, so that no step clicks. */
    private byte[] bytes(int from, int to) {
        byte[] bytes = new byte[2 * channels.length * (to - from)];
        double step = 1 / (FADE_SECONDS * rateHz);
        int at = 0;
        for (int n = from; n < to; n++) {
            double target = (channels[0].length - n) * step < 1 ? 0 : wantedGain;
            gain += Math.max(-step, Math.min(step, target - gain));
            for (double[] channel : channels) {
                double x = Math.max(-1, Math.min(1, gain * channel[n]));
                int value = (int) Math.rint(x * FULL_SCALE);
                bytes[at++] = (byte) value;
                bytes[at++] = (byte) (value >> 8);
            }
        }
        return bytes;
    }

    @Override
    public double seconds() {
        return heardSeconds;
    }

    @Override
    public boolean isOver() {
        return over;
    }

    @Override
    public void setGainDb(double gainDb) {
        wantedGain = factor(gainDb);
    }

    @Override
    public void close() {
        stopping = true;
        line.stop();
        line.flush();
        try {
            player.join(1000);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
