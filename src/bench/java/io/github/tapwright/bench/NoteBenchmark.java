package io.github.tapwright.bench;

import io.github.tapwright.audio.AudioFile;
import io.github.tapwright.audio.OpenedAudio;
import io.github.tapwright.audio.WavSamples;
import io.github.tapwright.audio.WavWriter;
import io.github.tapwright.note.NoteAnalysis;
import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.NoteSettings;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.MapFingerboard;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.SideBySide;
import io.github.tapwright.sitting.SourceRecording;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.FingerboardRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A run of 36 notes in four minutes, mono at 48 kHz, from the file to the map; and one low note by itself.
 *
 * <p>A command works in a Java that has just started, so {@link #coldRun} measures that: one run in a new process.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xmx512m", "-XX:+UseSerialGC"})
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 5, time = 5)
public class NoteBenchmark {

    private static final double RATE_HZ = 48_000;

    private Path folder = Path.of("");
    private Path file = Path.of("");
    private final Recording low =
            new FingerboardRun(List.of(new Fret(6, 0)), 6.65).recording(RATE_HZ, Chance.seeded(2));

    /** Writes the run. */
    @Setup(Level.Trial)
    public void write() throws IOException {
        folder = Files.createTempDirectory("run");
        file = folder.resolve("run.wav");
        WavWriter.write(file, FingerboardRun.fourMinutes().recording(RATE_HZ, Chance.seeded(1)), WavSamples.INT_24);
    }

    /** Takes it away again. */
    @TearDown(Level.Trial)
    public void takeAway() throws IOException {
        Files.delete(file);
        Files.delete(folder);
    }

    private static SourceRecording open(Path path) {
        OpenedAudio audio = AudioFile.open(path);
        return new SourceRecording(audio, "WAV", audio::notices);
    }

    private Fingerboard map() {
        return new MapFingerboard(NoteBenchmark::open, SideBySide.ALL_PROCESSORS)
                .map(List.of(file), Fingerboard.Settings.STANDARD, Progress.SILENT);
    }

    /** The whole run by a Java that knows the work. */
    @Benchmark
    public Fingerboard run() {
        return map();
    }

    /** The whole run by a Java that has just started. */
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Fork(
            value = 5,
            jvmArgsAppend = {"-Xmx512m", "-XX:+UseSerialGC"})
    @Warmup(iterations = 0)
    @Measurement(iterations = 1)
    public Fingerboard coldRun() {
        return map();
    }

    /** An open E2 of six seconds: some ninety partials. */
    @Benchmark
    public NoteResult lowNote() {
        return NoteAnalysis.analyse(low.stream(), NoteSettings.STANDARD);
    }
}
