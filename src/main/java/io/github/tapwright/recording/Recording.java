package io.github.tapwright.recording;

import java.util.Arrays;

/**
 * A short recording held whole in memory; it never changes after it was made.
 *
 * <p>Long recordings should stay a {@link SampleStream}. Samples are re full scale.
 */
public final class Recording {

    private final SampleRate sampleRate;
    private final double[][] channels;

    private Recording(SampleRate sampleRate, double[][] channels) {
        this.sampleRate = sampleRate;
        this.channels = channels;
    }

    /**
     * A recording of the given channels; the samples are copied.
     *
     * @param sampleRate samples per second
     * @param channels shape [channel][sample]; at least one channel, all of one length
     * @return the recording
     * @throws IllegalArgumentException if there is no channel or the lengths differ
     */
    public static Recording of(SampleRate sampleRate, double[]... channels) {
        if (channels.length == 0) {
            throw new IllegalArgumentException("a recording needs at least one channel");
        }
        double[][] copy = new double[channels.length][];
        for (int c = 0; c < channels.length; c++) {
            if (channels[c].length != channels[0].length) {
                throw new IllegalArgumentException("all channels of a recording must have one length");
            }
            copy[c] = channels[c].clone();
        }
        return new Recording(sampleRate, copy);
    }

    /** A recording that takes over channels which nobody else holds; nothing is copied. */
    static Recording holding(SampleRate sampleRate, double[][] channels) {
        return new Recording(sampleRate, channels);
    }

    /**
     * Reads a stream to its end; only for recordings known to be short.
     *
     * @param stream read to its end, not closed
     * @param maximumSamples how many samples a channel may have at most
     * @return the recording
     * @throws UnreadableRecordingException if the stream holds more than {@code maximumSamples}
     */
    public static Recording readAll(SampleStream stream, int maximumSamples) {
        double[][] all = new double[stream.channelCount()][0];
        double[][] block = new double[stream.channelCount()][8192];
        int length = 0;
        for (int n = stream.read(block); n > 0; n = stream.read(block)) {
            if (n > maximumSamples - length) {
                throw new UnreadableRecordingException(
                        "the recording is longer than " + maximumSamples + " samples; cut it into shorter pieces");
            }
            int needed = length + n;
            for (int c = 0; c < all.length; c++) {
                if (needed > all[c].length) {
                    all[c] = Arrays.copyOf(all[c], Math.max(needed, 2 * all[c].length));
                }
                System.arraycopy(block[c], 0, all[c], length, n);
            }
            length = needed;
        }
        for (int c = 0; c < all.length; c++) {
            all[c] = Arrays.copyOf(all[c], length);
        }
        return new Recording(stream.sampleRate(), all);
    }

    /**
     * Samples per second.
     *
     * @return the sample rate
     */
    public SampleRate sampleRate() {
        return sampleRate;
    }

    /**
     * Number of channels.
     *
     * @return at least 1
     */
    public int channelCount() {
        return channels.length;
    }

    /**
     * Number of samples in each channel.
     *
     * @return 0 or more
     */
    public int length() {
        return channels[0].length;
    }

    /**
     * A copy of one channel.
     *
     * @param channel from 0
     * @return the samples, re full scale
     */
    public double[] channel(int channel) {
        return channels[channel].clone();
    }

    /**
     * One channel of this recording by itself.
     *
     * @param channel from 0
     * @return a recording of one channel
     */
    public Recording only(int channel) {
        return new Recording(sampleRate, new double[][] {channels[channel]});
    }

    /**
     * This recording as a stream, as often as wanted.
     *
     * @return a fresh stream from the first sample
     */
    public SampleStream stream() {
        return new Stream();
    }

    private final class Stream implements SampleStream {
        private int position;

        @Override
        public SampleRate sampleRate() {
            return sampleRate;
        }

        @Override
        public int channelCount() {
            return channels.length;
        }

        @Override
        public int read(double[][] block) {
            int n = Math.min(block[0].length, length() - position);
            for (int c = 0; c < channels.length; c++) {
                System.arraycopy(channels[c], position, block[c], 0, n);
            }
            position += n;
            return n;
        }

        @Override
        public void close() {
            position = length();
        }
    }
}
