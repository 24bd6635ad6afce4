package io.github.tapwright.level;

import io.github.tapwright.level.broadcast.ChannelWeights;
import io.github.tapwright.level.broadcast.ProgrammeLoudness;
import io.github.tapwright.level.broadcast.ProgrammeLoudnessMeter;
import io.github.tapwright.recording.SampleStream;
import io.github.tapwright.signal.FullScaleRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Reads a recording once and measures all its levels.
 *
 * <p>Memory grows by some 5 kB for each second and channel, whatever the rate. Nothing is resampled but for
 * loudness in sone (to 48 kHz) and for peaks between samples (to four times the rate). Sources: [IEC61672-1],
 * [IEC61260-1], [BS1770], [ISO532-1].
 */
public final class LevelAnalysis {

    /** Version of the method, raised when its numbers change. */
    public static final String METHOD_VERSION = "level-2";

    private static final int BLOCK = 4096;
    private static final double LOWEST_RATE_HZ = 8000;
    private static final double CLASS_1_TOP_HZ = 20_000;

    private LevelAnalysis() {}

    /**
     * Measures a recording.
     *
     * @param stream read to its end, not closed; 8,000 Hz or more
     * @param settings what the samples mean
     * @return its levels
     * @throws IllegalArgumentException if the sample rate is below 8,000 Hz
     */
    public static LevelReport of(SampleStream stream, LevelSettings settings) {
        if (stream.sampleRate().hertz() < LOWEST_RATE_HZ) {
            throw new IllegalArgumentException("levels need a sample rate of 8000 Hz or more, this recording has "
                    + stream.sampleRate().hertz() + " Hz; record it again at 44.1 or 48 kHz");
        }
        List<ChannelMeter> meters = IntStream.range(0, stream.channelCount())
                .mapToObj(c -> new ChannelMeter(stream.sampleRate(), settings))
                .toList();
        Optional<ProgrammeLoudnessMeter> programme = ChannelWeights.ofUsualLayout(stream.channelCount())
                .map(weights -> new ProgrammeLoudnessMeter(weights, stream.sampleRate()));
        long samples = readAll(stream, meters, programme);
        Optional<ProgrammeLoudness> loudness = programme.map(ProgrammeLoudnessMeter::finish);
        return new LevelReport(
                meters.stream().map(ChannelMeter::finish).toList(),
                loudness,
                stream.sampleRate().seconds(samples),
                warnings(
                        stream,
                        settings,
                        samples,
                        meters.stream().mapToLong(ChannelMeter::clippedSamples).sum()),
                settings,
                METHOD_VERSION);
    }

    private static long readAll(
            SampleStream stream, List<ChannelMeter> meters, Optional<ProgrammeLoudnessMeter> programme) {
        double[][] block = new double[stream.channelCount()][BLOCK];
        long samples = 0;
        for (int n = stream.read(block); n > 0; n = stream.read(block)) {
            int count = n;
            for (int c = 0; c < block.length; c++) {
                meters.get(c).take(block[c], count);
            }
            programme.ifPresent(meter -> meter.take(block, count));
            samples += count;
        }
        return samples;
    }

    private static List<String> warnings(SampleStream stream, LevelSettings settings, long samples, long clipped) {
        List<String> warnings = new ArrayList<>();
        if (settings.reference() instanceof FullScale) {
            warnings.add("levels are relative to full scale; only a calibration makes them sound pressure levels");
        }
        if (stream.sampleRate().hertz() / 2 < CLASS_1_TOP_HZ) {
            warnings.add("sound above half the sample rate is not in the recording and not in the levels");
        }
        if (ChannelWeights.ofUsualLayout(stream.channelCount()).isEmpty()) {
            warnings.add("programme loudness is not defined for " + stream.channelCount()
                    + " channels of unknown layout; give one or two channels");
        }
        if (samples < stream.sampleRate().hertz()) {
            warnings.add("the recording is shorter than a second: levels of low bands and LASmax have not settled");
        }
        FullScaleRun.warning(clipped, "levels are too low").ifPresent(warnings::add);
        return warnings;
    }
}
