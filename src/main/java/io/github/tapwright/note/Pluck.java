package io.github.tapwright.note;

import java.util.Arrays;
import java.util.Optional;

/**
 * Where the string was plucked: the first moment at which the level comes within 20 dB of the loudest.
 *
 * @param onset first sample of the note
 * @param attackSeconds from a tenth to nine tenths of the largest amplitude within {@value #ATTACK_SECONDS} s
 * @param quiet how many samples before the onset hold nothing but the room
 */
record Pluck(int onset, double attackSeconds, int quiet) {

    private static final double FRAME_SECONDS = 0.002;
    private static final double ATTACK_SECONDS = 0.15;
    private static final double WITHIN = 0.1;
    private static final double REACHED = 0.9;
    private static final double GUARD_SECONDS = 0.015;

    /**
     * Finds the pluck.
     *
     * @param signal samples
     * @param rateHz samples per second
     * @return the pluck, empty if nothing stands out of silence
     */
    static Optional<Pluck> find(double[] signal, double rateHz) {
        int frame = (int) Math.max(1, Math.round(FRAME_SECONDS * rateHz));
        double[] level = frames(signal, frame);
        double top = Arrays.stream(level).max().orElse(0);
        if (top == 0) {
            return Optional.empty();
        }
        int first = 0;
        while (level[first] < WITHIN * top) {
            first++;
        }
        int end = Math.min(level.length, first + 1 + (int) (ATTACK_SECONDS / FRAME_SECONDS));
        double peak = Arrays.stream(level, first, end).max().orElse(top);
        int reached = first;
        while (level[reached] < REACHED * peak) {
            reached++;
        }
        int quiet = Math.max(0, first * frame - (int) (GUARD_SECONDS * rateHz));
        return Optional.of(new Pluck(first * frame, (reached - first) * frame / rateHz, quiet));
    }

    /** Root mean squares of successive frames. */
    static double[] frames(double[] signal, int frame) {
        return frames(signal, 0, signal.length, frame);
    }

    /** Root mean squares of successive frames of a stretch. */
    static double[] frames(double[] signal, int from, int to, int frame) {
        double[] level = new double[Math.max(0, to - from) / frame];
        for (int f = 0; f < level.length; f++) {
            double sum = 0;
            for (int n = from + f * frame; n < from + (f + 1) * frame; n++) {
                sum += signal[n] * signal[n];
            }
            level[f] = Math.sqrt(sum / frame);
        }
        return level;
    }
}
