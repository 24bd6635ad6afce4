package io.github.tapwright.level;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/** Sounds to measure, computed from their description. */
public final class Sound {

    private Sound() {}

    /** Samples of a function of time in seconds. */
    public static double[] of(double rateHz, double seconds, DoubleUnaryOperator value) {
        double[] samples = new double[(int) Math.round(rateHz * seconds)];
        Arrays.setAll(samples, n -> value.applyAsDouble(n / rateHz));
        return samples;
    }

    /** A sine of the given peak level re full scale. */
    public static double[] sine(double rateHz, double seconds, double frequencyHz, double peakDb) {
        double amplitude = Math.pow(10, peakDb / 20);
        return of(rateHz, seconds, t -> amplitude * Math.sin(2 * Math.PI * frequencyHz * t));
    }

    /** One sound after another. */
    public static double[] joined(double[]... parts) {
        return Arrays.stream(parts).flatMapToDouble(Arrays::stream).toArray();
    }
}
