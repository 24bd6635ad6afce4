package io.github.tapwright.synthesis;

import java.util.Random;

/** Noises of a room, seeded. */
public final class RoomNoise {

    private RoomNoise() {}

    /**
     * White Gaussian noise of unit standard deviation.
     *
     * @param random source of chance
     * @param length samples
     */
    public static double[] white(Random random, int length) {
        double[] noise = new double[length];
        for (int n = 0; n < length; n++) {
            noise[n] = random.nextGaussian();
        }
        return noise;
    }

    /**
     * Noise falling by about 3 dB an octave from 10 Hz to 3 kHz and by 6 dB above: the sum of low-passed noises two octaves
     * apart, each half as strong in amplitude as the one below. Not exactly pink, as no room is.
     *
     * @param random source of chance
     * @param length samples
     * @param rateHz sample rate
     */
    public static double[] pinkish(Random random, int length, double rateHz) {
        double[] noise = new double[length];
        double weight = 1;
        for (double corner = 10; corner < 5000 && corner < rateHz / 4; corner *= 4) {
            double pole = Math.exp(-2 * Math.PI * corner / rateHz);
            double state = random.nextGaussian() * Math.sqrt((1 - pole) / (1 + pole));
            for (int n = 0; n < length; n++) {
                state = pole * state + (1 - pole) * random.nextGaussian();
                noise[n] += weight * state;
            }
            weight /= 2;
        }
        return noise;
    }

    /**
     * Mains hum: the fundamental with harmonics 2 to 6, fixed ratios 1, 0.3, 0.5, 0.15, 0.25, 0.1, random
     * phases; the fundamental has unit amplitude.
     *
     * @param random source of chance
     * @param length samples
     * @param rateHz sample rate
     * @param mainsHz 50 or 60
     */
    public static double[] hum(Random random, int length, double rateHz, double mainsHz) {
        double[] ratios = {1, 0.3, 0.5, 0.15, 0.25, 0.1};
        double[] hum = new double[length];
        for (int h = 0; h < ratios.length; h++) {
            double phase = 2 * Math.PI * random.nextDouble();
            double radiansPerSample = 2 * Math.PI * mainsHz * (h + 1) / rateHz;
            for (int n = 0; n < length; n++) {
                hum[n] += ratios[h] * Math.sin(radiansPerSample * n + phase);
            }
        }
        return hum;
    }
}
