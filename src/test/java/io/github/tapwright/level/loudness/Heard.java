package io.github.tapwright.level.loudness;

import io.github.tapwright.recording.SampleRate;
import java.util.Arrays;

/** Sounds put through the loudness meter with the standard's calibration: a full-scale sine is 100 dB SPL. */
final class Heard {

    /** dB SPL of a mean square of 1, when a sine of full scale, mean square 1/2, is 100 dB. */
    static final double FULL_SCALE_LEVEL_DB = 100 + 10 * Math.log10(2);

    private Heard() {}

    static HeardLoudness free(double rateHz, double[] samples) {
        return (HeardLoudness) result(rateHz, FULL_SCALE_LEVEL_DB, samples);
    }

    static LoudnessResult result(double rateHz, double fullScaleLevelDb, double[] samples) {
        LoudnessMeter meter = new LoudnessMeter(new SampleRate(rateHz), fullScaleLevelDb, SoundField.FREE);
        for (int start = 0; start < samples.length; start += 4096) {
            int count = Math.min(4096, samples.length - start);
            meter.take(Arrays.copyOfRange(samples, start, start + count), count);
        }
        return meter.finish();
    }

    /** Rounds to 16 bits, as sound files do. */
    static double[] sixteenBits(double[] samples) {
        return Arrays.stream(samples).map(x -> Math.rint(x * 32_768) / 32_768).toArray();
    }
}
