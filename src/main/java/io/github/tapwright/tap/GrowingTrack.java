package io.github.tapwright.tap;

import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.signal.Decimator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A tap track while its recording still runs: fed block by block, and asked for a recent part at any moment.
 *
 * <p>Each channel is decimated once, as it comes. Of several channels the one with the most energy so far is given.
 */
public final class GrowingTrack {

    private final SampleRate sampleRate;
    private final int factor;
    private final int alignment;
    private final long keptFrames;
    private final List<Growing> channels;
    private long frames;

    /**
     * An empty track.
     *
     * @param sampleRate of every block
     * @param channelCount of every block, at least 1
     * @param settings the band to keep
     * @param keptSeconds how much of the past {@link #part} can give
     * @throws IllegalArgumentException if the rate is too low for the band
     */
    public GrowingTrack(SampleRate sampleRate, int channelCount, TapSettings settings, double keptSeconds) {
        this.sampleRate = sampleRate;
        this.factor = TapTrack.decimationFactor(sampleRate.hertz(), settings.highHz());
        // Cut where a decimated sample and a frame of the peaks begin together, so that no time shifts.
        this.alignment = factor * PeakFrames.frameLength(sampleRate.hertz());
        this.keptFrames = (long) Math.ceil(keptSeconds * sampleRate.hertz());
        int kept = (int) (keptFrames / factor) + 2 * alignment;
        this.channels = Stream.generate(() -> new Growing(sampleRate.hertz(), factor, settings, kept))
                .limit(channelCount)
                .toList();
    }

    /** One channel of it. */
    private static final class Growing {
        private final Decimator decimator;
        private final PeakFrames peaks;
        private final RecentSignal signal;
        private double energy;

        Growing(double rateHz, int factor, TapSettings settings, int kept) {
            decimator = new Decimator(rateHz, factor, TapTrack.keptBandHz(settings.highHz()));
            peaks = new PeakFrames(rateHz);
            signal = new RecentSignal(kept);
        }

        void append(double[] block, int count) {
            for (int i = 0; i < count; i++) {
                energy += block[i] * block[i];
            }
            peaks.append(block, count);
            signal.append(decimator.process(block, count));
        }
    }

    /**
     * Takes the next samples.
     *
     * @param block shape [channel][sample]; left unchanged
     * @param count how many samples of each channel count, at most 32,768
     */
    public void append(double[][] block, int count) {
        for (int c = 0; c < block.length; c++) {
            channels.get(c).append(block[c], count);
        }
        frames += count;
    }

    /**
     * Until when the kept signal is complete; the decimation filter needs to hear a little further than it tells.
     *
     * @return seconds from the start of the recording
     */
    public double completeSeconds() {
        return channels.get(0).signal.end() * factor / sampleRate.hertz();
    }

    /**
     * The last part of a recording.
     *
     * @param track the part, whose times count from its own start
     * @param startSeconds when it starts, from the start of the recording
     */
    public record Part(TapTrack track, double startSeconds) {

        /**
         * When it ends.
         *
         * @return seconds from the start of the recording
         */
        public double endSeconds() {
            return startSeconds + track.durationSeconds();
        }
    }

    /**
     * What was heard in a stretch of time.
     *
     * @param fromSeconds where it should start, from the start of the recording; later if that is forgotten
     * @param toSeconds where it should end; earlier if that was not heard yet
     * @return a copy, so that the recording can go on meanwhile
     */
    public Part part(double fromSeconds, double toSeconds) {
        Growing chosen = channels.get(loudest());
        long end = Math.min(chosen.signal.end() * factor, aligned(Math.min(toSeconds, 1e9) + 1e-9));
        end = toSeconds >= completeSeconds() ? chosen.signal.end() * factor : end;
        long oldest = Math.max(0, frames - keptFrames);
        long start = Math.min(aligned(Math.max(fromSeconds, sampleRate.seconds(oldest))), end / alignment * alignment);
        TapTrack track = new TapTrack(
                sampleRate,
                channels.size(),
                loudest(),
                factor,
                chosen.decimator.reach(),
                chosen.signal.between(start / factor, end / factor),
                chosen.peaks.from(start));
        return new Part(track, sampleRate.seconds(start));
    }

    private long aligned(double seconds) {
        long sample = (long) Math.floor(seconds * sampleRate.hertz());
        return sample / alignment * alignment;
    }

    private int loudest() {
        int loudest = 0;
        for (int c = 1; c < channels.size(); c++) {
            loudest = channels.get(c).energy > channels.get(loudest).energy ? c : loudest;
        }
        return loudest;
    }
}
