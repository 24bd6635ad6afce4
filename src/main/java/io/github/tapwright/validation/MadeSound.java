package io.github.tapwright.validation;

import java.util.Arrays;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/** Sounds whose truth is known because they are made here, by formula and seed. */
final class MadeSound {

    private MadeSound() {}

    static double[] of(double rateHz, double seconds, DoubleUnaryOperator atSeconds) {
        double[] samples = new double[(int) Math.round(rateHz * seconds)];
        Arrays.setAll(samples, n -> atSeconds.applyAsDouble(n / rateHz));
        return samples;
    }

    /** Peak level re full scale. */
    static double[] sine(double rateHz, double seconds, double frequencyHz, double peakDb) {
        double peak = Math.pow(10, peakDb / 20);
        return of(rateHz, seconds, t -> peak * Math.sin(2 * Math.PI * frequencyHz * t));
    }

    static double[] joined(double[]... parts) {
        double[] all = new double[Arrays.stream(parts).mapToInt(p -> p.length).sum()];
        int at = 0;
        for (double[] part : parts) {
            System.arraycopy(part, 0, all, at, part.length);
            at += part.length;
        }
        return all;
    }

    /** Adds white Gaussian noise; {@link Random} gives the same numbers on every machine. */
    static void addNoise(double[] samples, double rms, long seed) {
        Random random = new Random(seed);
        for (int n = 0; n < samples.length; n++) {
            samples[n] += rms * random.nextGaussian();
        }
    }
}
