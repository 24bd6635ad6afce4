package io.github.tapwright.note;

import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.recording.SampleStream;
import io.github.tapwright.signal.ChannelReader;

/**
 * All that a note analysis keeps of one recording: a signal decimated to the band of the partials, and the last
 * moments as they were recorded.
 *
 * <p>At most {@value #LONGEST_SECONDS} s are kept, some 25 megabytes; what follows is only counted.
 */
final class NoteTrack {

    static final int LONGEST_SECONDS = 120;

    private static final double BAND_MARGIN = 1.05;
    private static final double USABLE_OF_RATE = 0.45;
    private static final double RATE_OVER_BAND = 2.1;

    /** Partials somewhat above the highest wanted are fitted too, so that their tails lean on none that is reported. */
    private static final double BEYOND = 1.15;

    private final SampleRate sampleRate;
    private final double rateHz;
    private final double bandHz;
    private final double durationSeconds;
    private final int channelUsed;
    private final int channelCount;
    private final NoteChannel channel;

    private NoteTrack(
            SampleStream source, int factor, double bandHz, long length, int channelUsed, NoteChannel channel) {
        this.sampleRate = source.sampleRate();
        this.rateHz = sampleRate.hertz() / factor;
        this.bandHz = bandHz;
        this.durationSeconds = sampleRate.seconds(length);
        this.channelUsed = channelUsed;
        this.channelCount = source.channelCount();
        this.channel = channel;
    }

    /**
     * Reads a recording once. Of several channels the one with the most energy is used; mixing them would let
     * their paths through the room cancel each other.
     *
     * @param stream read to its end, not closed
     * @param settings how far up the partials are wanted
     * @return the track
     */
    static NoteTrack read(SampleStream stream, NoteSettings settings) {
        double rate = stream.sampleRate().hertz();
        double bandHz = Math.min(BEYOND * settings.highestPartialHz(), USABLE_OF_RATE * rate);
        int factor = (int) Math.max(1, Math.floor(rate / (RATE_OVER_BAND * BAND_MARGIN * bandHz)));
        ChannelReader.Loudest<NoteChannel> chosen =
                ChannelReader.loudest(stream, () -> new NoteChannel(rate, factor, BAND_MARGIN * bandHz));
        return new NoteTrack(stream, factor, bandHz, chosen.samples(), chosen.index(), chosen.channel());
    }

    /** Rate of the kept signal, Hz. */
    double rateHz() {
        return rateHz;
    }

    /** Highest frequency at which partials are looked for; those above the settings' highest are not reported. */
    double bandHz() {
        return bandHz;
    }

    double durationSeconds() {
        return durationSeconds;
    }

    int channelUsed() {
        return channelUsed;
    }

    int channelCount() {
        return channelCount;
    }

    boolean isCutShort() {
        return durationSeconds > LONGEST_SECONDS;
    }

    /** The kept signal, shared inside the package; nobody changes it. */
    double[] signal() {
        return channel.signal();
    }

    /** The end of the recording at its own rate. */
    double[] tail() {
        return channel.tail();
    }

    double tailRateHz() {
        return sampleRate.hertz();
    }

    long clippedSamples() {
        return channel.clippedSamples();
    }
}
