package io.github.tapwright.tap;

import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.recording.SampleStream;
import io.github.tapwright.signal.ChannelReader;

/**
 * All that a tap analysis keeps of one recording: a decimated signal and, for every millisecond, the
 * largest sample and whether it was clipped. Ten minutes at 96 kHz come to some 20 megabytes.
 */
public final class TapTrack {

    private final SampleRate sampleRate;
    private final int channelCount;
    private final int channelUsed;
    private final double durationSeconds;
    private final double decimatedRateHz;
    private final double filterReachSeconds;
    private final double[] signal;
    private final PeakFrames peaks;

    private TapTrack(SampleStream source, int channelUsed, double durationSeconds, ChannelTrack chosen, int factor) {
        this.sampleRate = source.sampleRate();
        this.channelCount = source.channelCount();
        this.channelUsed = channelUsed;
        this.durationSeconds = durationSeconds;
        this.decimatedRateHz = sampleRate.hertz() / factor;
        this.filterReachSeconds = sampleRate.seconds(chosen.filterReach());
        this.signal = chosen.signal();
        this.peaks = chosen.peaks();
    }

    /** A track of a recording that still runs: it lasts as long as its kept signal. */
    TapTrack(
            SampleRate sampleRate,
            int channelCount,
            int channelUsed,
            int factor,
            int filterReach,
            double[] signal,
            PeakFrames peaks) {
        this.sampleRate = sampleRate;
        this.channelCount = channelCount;
        this.channelUsed = channelUsed;
        this.decimatedRateHz = sampleRate.hertz() / factor;
        this.durationSeconds = signal.length / decimatedRateHz;
        this.filterReachSeconds = sampleRate.seconds(filterReach);
        this.signal = signal;
        this.peaks = peaks;
    }

    /**
     * Reads a recording once, block by block. Of several channels the one with the most energy is used;
     * mixing them would let their paths through the room cancel each other.
     *
     * @param stream read to its end, not closed
     * @param settings the band to keep
     * @return the track
     * @throws IllegalArgumentException if the recording's rate is too low for the band
     */
    public static TapTrack read(SampleStream stream, TapSettings settings) {
        double rate = stream.sampleRate().hertz();
        int factor = decimationFactor(rate, settings.highHz());
        ChannelReader.Loudest<ChannelTrack> chosen =
                ChannelReader.loudest(stream, () -> new ChannelTrack(rate, factor, keptBandHz(settings.highHz())));
        return new TapTrack(
                stream, chosen.index(), stream.sampleRate().seconds(chosen.samples()), chosen.channel(), factor);
    }

    static double keptBandHz(double highHz) {
        return 1.15 * highHz;
    }

    static int decimationFactor(double rateHz, double highHz) {
        if (rateHz < 3 * highHz) {
            throw new IllegalArgumentException("a recording at " + Math.round(rateHz)
                    + " samples a second cannot show resonances up to " + Math.round(highHz)
                    + " Hz; record at 44100 or more, or narrow the band");
        }
        return (int) Math.max(1, Math.floor(rateHz / (4 * highHz)));
    }

    /**
     * Rate of the recording.
     *
     * @return samples per second
     */
    public SampleRate sampleRate() {
        return sampleRate;
    }

    /**
     * Channels of the recording.
     *
     * @return at least 1
     */
    public int channelCount() {
        return channelCount;
    }

    /**
     * Which channel is analysed: the one with the most energy.
     *
     * @return from 0
     */
    public int channelUsed() {
        return channelUsed;
    }

    /**
     * Length of the recording.
     *
     * @return seconds
     */
    public double durationSeconds() {
        return durationSeconds;
    }

    /**
     * Rate of the kept signal.
     *
     * @return samples per second
     */
    public double decimatedRateHz() {
        return decimatedRateHz;
    }

    /** Whether not one sample of the analysed channel, the one with the most energy, differs from zero. */
    boolean isSilent() {
        return peaks.largest(0, durationSeconds) == 0;
    }

    /** Whether the samples are written so coarsely that a strike cut flat may pass unseen. */
    boolean isCoarse() {
        return peaks.isCoarse();
    }

    /** How far the decimation filter smears an event to either side, s. */
    double filterReachSeconds() {
        return filterReachSeconds;
    }

    /** The kept signal, shared inside the package for speed; nobody changes it. */
    double[] signal() {
        return signal;
    }

    PeakFrames peaks() {
        return peaks;
    }
}
