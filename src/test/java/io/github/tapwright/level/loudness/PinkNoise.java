package io.github.tapwright.level.loudness;

import io.github.tapwright.signal.Fourier;
import java.util.Random;

/** Seeded Gaussian noise with the same power in every third-octave band from 10 Hz up to half the rate. */
final class PinkNoise {

    private static final double LOWEST_HZ = 10;

    /** ln 10^(1/10), since a band of base ten holds ∫ df/f of that size. */
    private static final double THIRD_OCTAVE = Math.log(10) / 10;

    private PinkNoise() {}

    /** Noise whose bands each have a mean square of 1 on average, from a spectrum of random Gaussian lines. */
    static double[] of(double rateHz, double seconds, long seed) {
        int length = Fourier.quickLength((int) Math.round(rateHz * seconds));
        Random random = new Random(seed);
        double[] lines = new double[2 * length];
        for (int k = (int) Math.ceil(LOWEST_HZ * length / rateHz); k < length / 2; k++) {
            double scale = length * Math.sqrt(1 / (THIRD_OCTAVE * k)) / 2;
            lines[2 * k] = scale * random.nextGaussian();
            lines[2 * k + 1] = scale * random.nextGaussian();
        }
        return new Fourier(length).realFromOneSided(lines);
    }
}
