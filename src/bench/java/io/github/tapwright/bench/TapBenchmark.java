package io.github.tapwright.bench;

import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.TapAnalysis;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.synthesis.TapScene;
import io.github.tapwright.synthesis.TrueMode;
import io.github.tapwright.tap.Decays;
import io.github.tapwright.tap.ResponseCurve;
import io.github.tapwright.tap.ResponseCurveAverage;
import io.github.tapwright.tap.StrikeSet;
import io.github.tapwright.tap.TapSettings;
import io.github.tapwright.tap.TapTrack;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A minute of taps, mono at 48 kHz: 20 strikes on a body of ten modes, the whole way and stage by stage.
 *
 * <p>What {@link #resonances} takes beyond {@link #strikes} and {@link #responseCurve} is the fit. The heap is the
 * launcher's.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
        value = 2,
        jvmArgsAppend = {"-Xmx512m", "-XX:+UseSerialGC"})
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 5, time = 5)
public class TapBenchmark {

    private static final TapSettings SETTINGS = TapSettings.STANDARD;

    private final Recording recording = aMinuteOfTaps();
    private final List<TapTrack> tracks = List.of(TapTrack.read(recording.stream(), SETTINGS));
    private final Decays decays = StrikeSet.find(tracks, SETTINGS).decays().orElseThrow();

    private static Recording aMinuteOfTaps() {
        return TapScene.of(
                        TrueMode.resonator(101, 24, 1),
                        TrueMode.resonator(188, 32, 1.2),
                        TrueMode.resonator(205, 30, 0.9),
                        TrueMode.resonator(232, 36, 0.7),
                        TrueMode.resonator(285, 40, 0.5),
                        TrueMode.resonator(372, 34, 0.6),
                        TrueMode.resonator(431, 44, 0.3),
                        TrueMode.resonator(520, 38, 0.4),
                        TrueMode.resonator(655, 48, 0.35),
                        TrueMode.resonator(790, 42, 0.3))
                .strikes(20, 3.04)
                .seed(2)
                .build()
                .recording();
    }

    /** From samples to named resonances. */
    @Benchmark
    public TapResult whole() {
        return TapAnalysis.analyse(List.of(TapTrack.read(recording.stream(), SETTINGS)), SETTINGS, HoleState.OPEN);
    }

    /** Reading and decimation. */
    @Benchmark
    public TapTrack reading() {
        return TapTrack.read(recording.stream(), SETTINGS);
    }

    /** Finding and judging the strikes of a track. */
    @Benchmark
    public StrikeSet strikes() {
        return StrikeSet.find(tracks, SETTINGS);
    }

    /** The mean response with its band. */
    @Benchmark
    public ResponseCurve responseCurve() {
        return ResponseCurveAverage.of(decays, SETTINGS);
    }

    /** Everything after reading. */
    @Benchmark
    public TapResult resonances() {
        return TapAnalysis.analyse(tracks, SETTINGS, HoleState.OPEN);
    }
}
