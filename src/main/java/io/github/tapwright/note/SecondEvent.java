package io.github.tapwright.note;

import io.github.tapwright.signal.LinearPrediction;
import java.util.OptionalInt;

/**
 * Finds a second pluck or knock during a decay.
 *
 * <p>A predictor learnt from the decay foretells all that rings; an event is what it cannot foretell. The prediction
 * error in frames of {@value #FRAME_SECONDS} s must leap over everything of the last {@value #BEFORE_SECONDS} s, and the sound
 * itself must rise, so that the crackle of a dying note in noise is no event. Source of the predictor: [Makhoul1975].
 */
final class SecondEvent {

    private static final int ORDER = 32;
    private static final double LEARN_SECONDS = 1.5;
    private static final double FRAME_SECONDS = 0.004;
    private static final double BEFORE_SECONDS = 0.08;
    private static final double LATE_SECONDS = 0.12;
    private static final double LEAP_DB = 9;
    private static final double RISE_DB = 1.5;

    private SecondEvent() {}

    /**
     * Looks for the first event.
     *
     * @param signal samples
     * @param from onset of the note
     * @param rateHz samples per second
     * @return its sample, empty if the decay is undisturbed
     */
    static OptionalInt find(double[] signal, int from, double rateHz) {
        int frame = (int) Math.round(FRAME_SECONDS * rateHz);
        double[] autocorrelation = new double[ORDER + 1];
        int to = (int) Math.min(signal.length, from + LEARN_SECONDS * rateHz);
        LinearPrediction.accumulate(signal, from, to, autocorrelation);
        if (autocorrelation[0] == 0) {
            return OptionalInt.empty();
        }
        double[] error = Pluck.frames(LinearPrediction.learn(autocorrelation).error(signal), frame);
        double[] level = Pluck.frames(signal, frame);
        int before = (int) Math.round(BEFORE_SECONDS / FRAME_SECONDS);
        double leap = Math.pow(10, LEAP_DB / 20);
        double rise = Math.pow(10, RISE_DB / 20);
        for (int f = from / frame + (int) (LATE_SECONDS / FRAME_SECONDS); f < error.length; f++) {
            double recent = 0;
            for (int i = f - before; i < f - 1; i++) {
                recent = Math.max(recent, error[Math.max(0, i)]);
            }
            if (error[f] > leap * recent && mean(level, f, f + before) > rise * mean(level, f - before, f)) {
                return OptionalInt.of(f * frame);
            }
        }
        return OptionalInt.empty();
    }

    private static double mean(double[] level, int from, int to) {
        double sum = 0;
        int count = 0;
        for (int f = Math.max(0, from); f < Math.min(level.length, to); f++) {
            sum += level[f] * level[f];
            count++;
        }
        return Math.sqrt(sum / Math.max(1, count));
    }
}
