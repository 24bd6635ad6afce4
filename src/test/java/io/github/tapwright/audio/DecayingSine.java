package io.github.tapwright.audio;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;

/** The known sound of these tests: 0.3 s of x(t) = 0.6 · exp(−t / 0.1 s) · sin(2π · 440 Hz · t). */
final class DecayingSine {

    static final double SECONDS = 0.3;

    private DecayingSine() {}

    static double[] samples(int rateHz) {
        double[] samples = new double[(int) Math.round(SECONDS * rateHz)];
        for (int i = 0; i < samples.length; i++) {
            double t = (double) i / rateHz;
            samples[i] = 0.6 * Math.exp(-t / 0.1) * Math.sin(2 * Math.PI * 440 * t);
        }
        return samples;
    }

    /** The samples as integers of the given bits, rounded, then back re full scale: what a lossless file holds. */
    static double[] rounded(int rateHz, int bits) {
        double fullScale = Math.scalb(1.0, bits - 1);
        double[] samples = samples(rateHz);
        for (int i = 0; i < samples.length; i++) {
            samples[i] = (long) Math.rint(samples[i] * fullScale) / fullScale;
        }
        return samples;
    }

    static Recording mono(int rateHz) {
        return Recording.of(new SampleRate(rateHz), samples(rateHz));
    }
}
