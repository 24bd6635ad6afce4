package io.github.tapwright.level.broadcast;

import io.github.tapwright.recording.Recording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Makes sounds equally loud by turning the louder ones down to the faintest.
 *
 * <p>gain_i = min_j L_j − L_i ≤ 0 dB with the loudness L in LUFS of [BS1770]. Nothing is turned up. Where a sound would
 * still pass full scale (compressed files can hold such samples), all are turned down alike by what is needed.
 *
 * @param by which loudness was made equal
 * @param loudnessLufs loudness of each sound before
 * @param gainsDb gain for each sound, 0 dB or less
 */
public record LoudnessMatch(MatchedBy by, List<Double> loudnessLufs, List<Double> gainsDb) {

    /** Keeps copies of the lists. */
    public LoudnessMatch {
        loudnessLufs = List.copyOf(loudnessLufs);
        gainsDb = List.copyOf(gainsDb);
    }

    /**
     * Matches sounds of one channel.
     *
     * @param sounds two or more
     * @param by which loudness
     * @return the gains; empty if a sound has no such loudness, being shorter than 400 ms or silent
     */
    public static Optional<LoudnessMatch> of(List<Recording> sounds, MatchedBy by) {
        List<Double> loudness = new ArrayList<>();
        for (Recording sound : sounds) {
            OptionalDouble lufs = lufs(sound, by);
            if (lufs.isEmpty()) {
                return Optional.empty();
            }
            loudness.add(lufs.getAsDouble());
        }
        double faintest = loudness.stream().mapToDouble(l -> l).min().orElse(0);
        double over = IntStream.range(0, sounds.size())
                .mapToDouble(i -> peakDb(sounds.get(i)) + faintest - loudness.get(i))
                .filter(db -> db > 0)
                .max()
                .orElse(0);
        return Optional.of(new LoudnessMatch(
                by, loudness, loudness.stream().map(l -> faintest - l - over).toList()));
    }

    /**
     * One loudness of one sound.
     *
     * @param sound of one channel
     * @param by which loudness
     * @return LUFS; empty if it is shorter than 400 ms or silent
     */
    public static OptionalDouble lufs(Recording sound, MatchedBy by) {
        if (sound.channelCount() != 1) {
            throw new IllegalArgumentException("sounds are matched by one channel, not " + sound.channelCount());
        }
        ProgrammeLoudnessMeter meter = new ProgrammeLoudnessMeter(new ChannelWeights(List.of(1.0)), sound.sampleRate());
        meter.take(new double[][] {sound.channel(0)}, sound.length());
        return by.of(meter.finish());
    }

    private static double peakDb(Recording sound) {
        double peak = 0;
        for (double sample : sound.channel(0)) {
            peak = Math.max(peak, Math.abs(sample));
        }
        return 20 * Math.log10(peak);
    }
}
