package io.github.tapwright.audio;

import java.util.Arrays;

/** What a library has just decoded, waiting to be handed out in blocks of another size. */
final class DecodedFrame {

    private double[][] channels = {};
    private int[] lengths = {};
    private int taken;

    /** Empties the frame and sets how many channels the next samples come in. */
    void restart(int channelCount) {
        if (channels.length != channelCount) {
            channels = new double[channelCount][0];
            lengths = new int[channelCount];
        }
        Arrays.fill(lengths, 0);
        taken = 0;
    }

    /** Adds samples to one channel, each times {@code scale}. */
    void append(int channel, float[] samples, int from, int count, double scale) {
        int length = lengths[channel];
        if (length + count > channels[channel].length) {
            channels[channel] = Arrays.copyOf(channels[channel], Math.max(length + count, 4096));
        }
        double[] into = channels[channel];
        for (int i = 0; i < count; i++) {
            into[length + i] = samples[from + i] * scale;
        }
        lengths[channel] = length + count;
    }

    /** Keeps only the first {@code length} samples of each channel. */
    void shorten(int length) {
        Arrays.fill(lengths, length);
    }

    boolean isUsedUp() {
        return taken >= length();
    }

    int length() {
        return lengths.length == 0 ? 0 : lengths[0];
    }

    int channelCount() {
        return channels.length;
    }

    /** Moves as many samples as there are and fit into the front of the block. */
    int drain(double[][] block) {
        int n = Math.min(block[0].length, length() - taken);
        for (int c = 0; c < block.length; c++) {
            System.arraycopy(channels[c], taken, block[c], 0, n);
        }
        taken += n;
        return n;
    }
}
