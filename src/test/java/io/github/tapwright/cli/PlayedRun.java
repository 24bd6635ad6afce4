package io.github.tapwright.cli;

import io.github.tapwright.audio.WavSamples;
import io.github.tapwright.audio.WavWriter;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.StringNote;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.random.RandomGenerator;

/** Real WAV files of computed notes, one after another as a maker plays them. */
final class PlayedRun {

    static final double RATE_HZ = 44_100;
    static final double E2 = 82.4069;
    static final int NOTES = 10;
    static final int DEAD_FRET = 6;

    private PlayedRun() {}

    /** Joins notes with a short silence between; every note but the last is stopped within 20 ms. */
    static Path write(Path file, double[]... notes) throws IOException {
        RandomGenerator chance = Chance.seeded(3);
        double[] all = new double[Arrays.stream(notes).mapToInt(n -> n.length).sum() + (int) RATE_HZ];
        int at = (int) RATE_HZ / 2;
        for (double[] note : notes) {
            int ramp = (int) (0.02 * RATE_HZ);
            for (int n = 0; n < note.length; n++) {
                all[at + n] = note[n] * Math.min(1, (double) (note.length - n) / ramp);
            }
            at += note.length;
        }
        for (int n = 0; n < all.length; n++) {
            all[n] += 2e-5 * chance.nextGaussian();
        }
        WavWriter.write(file, Recording.of(new SampleRate(RATE_HZ), all), WavSamples.INT_24);
        return file;
    }

    static double[] note(double hz, double decaySeconds, double gain, long seed) {
        double[] x = StringNote.plain(hz, 1e-5, decaySeconds, 1.4)
                .inNoise(80, 0.05)
                .damped(0.05)
                .samples(RATE_HZ, Chance.seeded(seed));
        return Arrays.stream(x).map(v -> gain * v).toArray();
    }

    /** The lowest string from its open note up; one fret dies away three times as fast. */
    static Path stringWithADeadFret(Path file) throws IOException {
        double[][] notes = new double[NOTES][];
        for (int fret = 0; fret < NOTES; fret++) {
            notes[fret] = note(E2 * Math.pow(2, fret / 12.0), fret == DEAD_FRET ? 1.2 : 4 - 0.1 * fret, 1, fret + 1);
        }
        return write(file, notes);
    }
}
