package io.github.tapwright.bench;

import io.github.tapwright.audio.AudioFile;
import io.github.tapwright.audio.OpenedAudio;
import io.github.tapwright.level.broadcast.ChannelWeights;
import io.github.tapwright.level.broadcast.ProgrammeLoudness;
import io.github.tapwright.level.broadcast.ProgrammeLoudnessMeter;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.mode.TapAnalysis;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.signal.Fourier;
import io.github.tapwright.tap.TapSettings;
import io.github.tapwright.tap.TapTrack;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * The jobs that validation/speed gives to other programs, done by this one in a warm machine: one line a job, its name
 * and the middle of several times in seconds, tab separated.
 *
 * <p>{@code fft N…}, {@code decode FILE…}, {@code loudness FILE}, {@code taps FILE…}; taps are followed by frequency and Q
 * of every resonance, so that speed is not bought with accuracy.
 */
public final class SideBySideJobs {

    private static final int ROUNDS = 9;
    private static final int BLOCK = 8192;

    private SideBySideJobs() {}

    /** The job and what it is done with. */
    public static void main(String[] args) {
        List<String> with = Arrays.asList(args).subList(1, args.length);
        switch (args[0]) {
            case "fft" -> with.forEach(n -> transform(Integer.parseInt(n)));
            case "decode" ->
                with.forEach(f -> say("decode " + f.substring(f.lastIndexOf('.') + 1), seconds(() -> decode(f)), ""));
            case "loudness" -> with.forEach(f -> say("loudness", seconds(() -> loudness(f)), ""));
            case "taps" -> with.forEach(SideBySideJobs::taps);
            default -> throw new IllegalArgumentException(args[0]);
        }
    }

    private static void say(String job, double seconds, String more) {
        System.out.println(String.format(Locale.ROOT, "%s\t%.9f%s", job, seconds, more));
    }

    /** The middle of several times, after as many that do not count. */
    private static double seconds(Supplier<?> job) {
        double[] seconds = new double[ROUNDS];
        for (int i = -ROUNDS; i < ROUNDS; i++) {
            long began = System.nanoTime();
            if (job.get() == null) {
                throw new IllegalStateException("nothing came of it");
            }
            seconds[Math.max(i, 0)] = 1e-9 * (System.nanoTime() - began);
        }
        Arrays.sort(seconds);
        return seconds[ROUNDS / 2];
    }

    private static void transform(int length) {
        Fourier fourier = new Fourier(length);
        double[] noise = new Random(1).doubles(length, -0.5, 0.5).toArray();
        int repeats = 1 + 4_000_000 / length;
        double all = seconds(() -> {
            double[] last = noise;
            for (int i = 0; i < repeats; i++) {
                last = fourier.forward(noise);
            }
            return last;
        });
        say("fft " + length, all / repeats, "");
    }

    private static Long decode(String file) {
        long samples = 0;
        try (OpenedAudio audio = AudioFile.open(Path.of(file))) {
            double[][] block = new double[audio.channelCount()][BLOCK];
            for (int n = audio.read(block); n > 0; n = audio.read(block)) {
                samples += n;
            }
        }
        return samples;
    }

    private static ProgrammeLoudness loudness(String file) {
        try (OpenedAudio audio = AudioFile.open(Path.of(file))) {
            ProgrammeLoudnessMeter meter = new ProgrammeLoudnessMeter(
                    ChannelWeights.ofUsualLayout(audio.channelCount()).orElseThrow(), audio.sampleRate());
            double[][] block = new double[audio.channelCount()][BLOCK];
            for (int n = audio.read(block); n > 0; n = audio.read(block)) {
                meter.take(block, n);
            }
            return meter.finish();
        }
    }

    private static void taps(String file) {
        TapResult found = analyse(file);
        String list = found.resonances().stream()
                .map(NamedResonance::resonance)
                .map(r -> String.format(
                        Locale.ROOT,
                        "%.4f,%.3f",
                        r.frequencyHz().value(),
                        r.q().value()))
                .collect(Collectors.joining("\t", "\t", ""));
        say(file, seconds(() -> analyse(file)), list);
    }

    private static TapResult analyse(String file) {
        try (OpenedAudio audio = AudioFile.open(Path.of(file))) {
            return TapAnalysis.analyse(
                    List.of(TapTrack.read(audio, TapSettings.STANDARD)), TapSettings.STANDARD, HoleState.OPEN);
        }
    }
}
