package io.github.tapwright.level;

import io.github.tapwright.level.loudness.LoudnessMeter;
import io.github.tapwright.level.loudness.SoundField;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.statistics.Estimate;
import java.util.Random;

/** Prints how many times faster than it sounds a minute of noise is measured; a measurement, not a test. */
public final class LevelSpeed {

    private static final double SECONDS = 60;
    private static final int ROUNDS = 4;

    private LevelSpeed() {}

    /** Runs with the rates 44.1 and 48 kHz; the last rounds are the warm ones. */
    public static void main(String[] arguments) {
        for (double rateHz : new double[] {44_100, 48_000}) {
            Random random = new Random(1);
            double[] noise = Sound.of(rateHz, SECONDS, t -> 0.1 * random.nextGaussian());
            for (int round = 0; round < ROUNDS; round++) {
                System.out.printf(
                        "%.0f Hz: loudness %.0f times, everything %.0f times real time%n",
                        rateHz, times(() -> loudness(rateHz, noise)), times(() -> everything(rateHz, noise)));
            }
        }
    }

    private static double times(Runnable measurement) {
        long start = System.nanoTime();
        measurement.run();
        return SECONDS / ((System.nanoTime() - start) * 1e-9);
    }

    private static void loudness(double rateHz, double[] noise) {
        LoudnessMeter meter = new LoudnessMeter(new SampleRate(rateHz), 100, SoundField.FREE);
        meter.take(noise, noise.length);
        meter.finish();
    }

    private static void everything(double rateHz, double[] noise) {
        Calibration calibration = new Calibration(
                Estimate.of(100, 0.2), CalibratorTone.classOne(94), 1000, 0, 0, 10, CalibrationCheck.METHOD_VERSION);
        LevelAnalysis.of(Recording.of(new SampleRate(rateHz), noise).stream(), LevelSettings.calibrated(calibration));
    }
}
