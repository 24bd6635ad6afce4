package io.github.tapwright.note;

import java.util.Arrays;
import java.util.OptionalInt;

/**
 * Finds where a note begins to die away faster than a free string can.
 *
 * <p>A sum of exponentials falls ever more slowly in decibels, and noise only adds to that. So a last part that falls
 * {@value #STEEPER} times as fast as what came before and ends {@value #EXTRA_DB} dB below where that would have led was faded
 * out or damped; beats seldom reach so deep in a whole note. The break is found by fitting two joined straight lines to the level in frames of {@value #FRAME_SECONDS} s.
 */
final class Fade {

    private static final double FRAME_SECONDS = 0.04;
    private static final double SILENCE_DB = -130;
    private static final double STEEPER = 2.5;
    private static final double EXTRA_DB = 18;
    private static final double VISIBLE_DB = 0.7;
    private static final double UNSEEN = 0.12;
    private static final int FEWEST_FRAMES = 3;
    private static final double LEAST_SLOPE_DB = 0.05;

    private Fade() {}

    /**
     * Looks for a fade.
     *
     * @param signal samples
     * @param from onset of the note
     * @param to end of what is looked at
     * @param rateHz samples per second
     * @return sample at which the fade begins, empty if the note dies away freely
     */
    static OptionalInt find(double[] signal, int from, int to, double rateHz) {
        int frame = (int) Math.round(FRAME_SECONDS * rateHz);
        double[] db = Arrays.stream(Pluck.frames(signal, from, to, frame))
                .map(level -> Math.max(SILENCE_DB, 20 * Math.log10(level)))
                .toArray();
        int length = db.length;
        // The end of digital silence after a fade says nothing about its slope.
        while (length > 2 * FEWEST_FRAMES && db[length - 1] <= SILENCE_DB && db[length - 2] <= SILENCE_DB) {
            length--;
        }
        int start = breakFrame(db, length);
        return start < 0 ? OptionalInt.empty() : OptionalInt.of(from + start * frame);
    }

    private static int breakFrame(double[] db, int length) {
        double least = Double.POSITIVE_INFINITY;
        int best = -1;
        for (int b = 2 * FEWEST_FRAMES; b <= length - FEWEST_FRAMES; b++) {
            double cost = line(db, 1, b)[2] + line(db, b, length)[2];
            if (cost < least) {
                least = cost;
                best = b;
            }
        }
        if (best < 0) {
            return -1;
        }
        // A fade begins gently, well before the break: the line before it must not lean on its first part.
        int part = length - best;
        int clear = Math.max(2 * FEWEST_FRAMES, best - 2 * part);
        double[] early = line(db, Math.max(1, clear - 5 * part), clear);
        double[] late = line(db, best, length);
        double extra = db[length - 1] - early[0] - early[1] * (length - 1);
        boolean steeper = late[1] < STEEPER * Math.min(-LEAST_SLOPE_DB, early[1]);
        return steeper && extra < -EXTRA_DB ? walkBack(db, early, best, length) : -1;
    }

    private static int walkBack(double[] db, double[] early, int best, int length) {
        int f = best;
        while (f > FEWEST_FRAMES && db[f - 1] < early[0] + early[1] * (f - 1) - VISIBLE_DB) {
            f--;
        }
        return Math.max(1, f - 1 - (int) Math.ceil(UNSEEN * (length - f)));
    }

    /** Least squares: value at frame 0, slope per frame, and the sum of squares left. */
    private static double[] line(double[] db, int from, int to) {
        int n = to - from;
        double meanX = (from + to - 1) / 2.0;
        double meanY = 0;
        for (int f = from; f < to; f++) {
            meanY += db[f] / n;
        }
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int f = from; f < to; f++) {
            xx += (f - meanX) * (f - meanX);
            xy += (f - meanX) * (db[f] - meanY);
            yy += (db[f] - meanY) * (db[f] - meanY);
        }
        double slope = xx == 0 ? 0 : xy / xx;
        return new double[] {meanY - slope * meanX, slope, Math.max(0, yy - slope * xy)};
    }
}
