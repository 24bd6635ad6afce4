package io.github.tapwright.sitting.live;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.recording.SampleRate;
import java.util.List;

/**
 * How a live input is read: integers, signed, the low byte first, as they also lie in a WAV file.
 *
 * @param rateHz samples per second: 44,100, 48,000 or 96,000
 * @param channelCount 1 or 2
 * @param bits of each sample: 16 or 24
 */
public record LiveFormat(int rateHz, int channelCount, int bits) {

    private static final List<Integer> RATES_HZ = List.of(44_100, 48_000, 96_000);

    /** What most interfaces do best. */
    public static final LiveFormat STANDARD = new LiveFormat(48_000, 1, 24);

    /** Refuses formats this bench does not record in. */
    public LiveFormat {
        if (!RATES_HZ.contains(rateHz)) {
            throw new RefusedEntryException("record at 44100, 48000 or 96000 samples a second, not at " + rateHz);
        }
        if (channelCount < 1 || channelCount > 2) {
            throw new RefusedEntryException("record 1 or 2 channels, not " + channelCount);
        }
        if (bits != 16 && bits != 24) {
            throw new RefusedEntryException("record 16 or 24 bit, not " + bits);
        }
    }

    /**
     * Every format an input may offer.
     *
     * @return the finest first
     */
    public static List<LiveFormat> all() {
        return List.of(96_000, 48_000, 44_100).stream()
                .flatMap(rate -> List.of(2, 1).stream()
                        .flatMap(channels -> List.of(24, 16).stream().map(b -> new LiveFormat(rate, channels, b))))
                .toList();
    }

    /**
     * Bytes of one sample of all channels.
     *
     * @return 2 to 6
     */
    public int frameBytes() {
        return channelCount * bits / 8;
    }

    /**
     * The rate as analyses take it.
     *
     * @return samples per second
     */
    public SampleRate sampleRate() {
        return new SampleRate(rateHz);
    }

    /**
     * In words.
     *
     * @return such as "48 kHz, 1 channel, 24 bit"
     */
    public String text() {
        String rate = rateHz % 1000 == 0 ? Integer.toString(rateHz / 1000) : Double.toString(rateHz / 1000.0);
        return rate + " kHz, " + channelCount + (channelCount == 1 ? " channel, " : " channels, ") + bits + " bit";
    }
}
