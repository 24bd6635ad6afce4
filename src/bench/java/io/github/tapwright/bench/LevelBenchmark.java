package io.github.tapwright.bench;

import io.github.tapwright.level.Calibration;
import io.github.tapwright.level.CalibrationCheck;
import io.github.tapwright.level.CalibratorTone;
import io.github.tapwright.level.LevelAnalysis;
import io.github.tapwright.level.LevelReport;
import io.github.tapwright.level.LevelSettings;
import io.github.tapwright.level.Sound;
import io.github.tapwright.level.broadcast.ChannelWeights;
import io.github.tapwright.level.broadcast.ProgrammeLoudness;
import io.github.tapwright.level.broadcast.ProgrammeLoudnessMeter;
import io.github.tapwright.level.loudness.LoudnessMeter;
import io.github.tapwright.level.loudness.LoudnessResult;
import io.github.tapwright.level.loudness.SoundField;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Ten seconds of noise: loudness alone, programme loudness of two channels, everything with and without calibration. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xmx512m", "-XX:+UseSerialGC"})
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class LevelBenchmark {

    private static final double SECONDS = 10;
    private static final int BLOCK = 4096;

    /** Sample rate, Hz. */
    @Param({"44100", "48000"})
    public double rateHz;

    private double[] noise = {};

    /** Makes the sound before the clock runs. */
    @Setup
    public void makeNoise() {
        Random random = new Random(1);
        noise = Sound.of(rateHz, SECONDS, t -> 0.1 * random.nextGaussian());
    }

    /** Loudness in sone of changing sounds, from 44.1 kHz with resampling. */
    @Benchmark
    public LoudnessResult loudness() {
        LoudnessMeter meter = new LoudnessMeter(new SampleRate(rateHz), 100, SoundField.FREE);
        meter.take(noise, noise.length);
        return meter.finish();
    }

    /** Integrated, momentary and short-term loudness, range and true peak of two channels. */
    @Benchmark
    public ProgrammeLoudness programme() {
        ProgrammeLoudnessMeter meter =
                new ProgrammeLoudnessMeter(ChannelWeights.ofUsualLayout(2).orElseThrow(), new SampleRate(rateHz));
        double[][] block = new double[2][BLOCK];
        for (int start = 0; start < noise.length; start += BLOCK) {
            int count = Math.min(BLOCK, noise.length - start);
            System.arraycopy(noise, start, block[0], 0, count);
            System.arraycopy(noise, start, block[1], 0, count);
            meter.take(block, count);
        }
        return meter.finish();
    }

    /** Levels, bands and programme loudness. */
    @Benchmark
    public LevelReport relative() {
        return report(LevelSettings.RELATIVE);
    }

    /** The same and loudness in sone; the calibration is made anew each time, which takes a few milliseconds. */
    @Benchmark
    public LevelReport calibrated() {
        return report(LevelSettings.calibrated((Calibration) CalibrationCheck.of(
                Sound.sine(rateHz, 4, 1000, -20), new SampleRate(rateHz), CalibratorTone.classOne(94))));
    }

    private LevelReport report(LevelSettings settings) {
        return LevelAnalysis.of(Recording.of(new SampleRate(rateHz), noise).stream(), settings);
    }
}
