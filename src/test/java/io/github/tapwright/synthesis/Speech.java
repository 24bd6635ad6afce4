package io.github.tapwright.synthesis;

import java.util.Random;

/**
 * Crude talk in the room: voiced bursts of 120 to 350 ms, a pulse train of 90 to 190 Hz through three formants,
 * each swelling and fading over at least 40 ms so that nothing in it is as sudden as a strike.
 */
public final class Speech {

    private final Random random;
    private final double rateHz;

    private Speech(Random random, double rateHz) {
        this.random = random;
        this.rateHz = rateHz;
    }

    /**
     * Speech-like noise whose largest sample is 1.
     *
     * @param random source of chance
     * @param length samples
     * @param rateHz sample rate
     */
    public static double[] samples(Random random, int length, double rateHz) {
        Speech speech = new Speech(random, rateHz);
        double[] all = new double[length];
        double at = 0.1 * random.nextDouble();
        while (at * rateHz < length) {
            double duration = speech.between(0.12, 0.35);
            speech.addSyllable(all, (int) (at * rateHz), duration);
            at += duration + speech.between(0.03, 0.25);
        }
        Levels.scaleToPeak(all, 1);
        return all;
    }

    private void addSyllable(double[] all, int from, double duration) {
        double[] sound = pulses((int) (duration * rateHz));
        double[] formants = {between(350, 750), between(1000, 1900), between(2300, 2900)};
        for (double formant : formants) {
            resonate(sound, formant, 8);
        }
        double fade = between(0.04, duration / 2) * rateHz;
        for (int n = 0; n < sound.length && from + n < all.length; n++) {
            double edge = Math.min(1, Math.min(n, sound.length - 1 - n) / fade);
            all[from + n] += sound[n] * (1 - Math.cos(Math.PI * edge)) / 2;
        }
    }

    private double[] pulses(int length) {
        double[] sound = new double[length];
        double pitch = between(90, 190);
        double glide = between(-0.2, 0.2);
        double phase = 0;
        for (int n = 0; n < length; n++) {
            phase += pitch * (1 + glide * n / length) / rateHz;
            double within = phase - Math.floor(phase);
            sound[n] = within < 0.6 ? Math.sin(Math.PI * within / 0.6) * within : 0;
        }
        return sound;
    }

    private void resonate(double[] sound, double frequency, double q) {
        double radius = Math.exp(-Math.PI * frequency / q / rateHz);
        double b1 = 2 * radius * Math.cos(2 * Math.PI * frequency / rateHz);
        double b2 = -radius * radius;
        double y1 = 0;
        double y2 = 0;
        for (int n = 0; n < sound.length; n++) {
            double y = (1 - b1 - b2) * sound[n] + b1 * y1 + b2 * y2;
            y2 = y1;
            y1 = y;
            sound[n] = y;
        }
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
