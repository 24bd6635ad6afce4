package io.github.tapwright.note;

import java.util.OptionalInt;

/**
 * Finds where a finger or a cut stopped the string.
 *
 * <p>Within {@value #MOMENT_SECONDS} s the level falls by {@value #DROP_DB} dB more than it did in the same time before, and never comes
 * back. A free string's exponentials cannot do that; beats dip as deep but return.
 * Derived here; the limits are chosen, not measured.
 */
final class Stop {

    private static final double FRAME_SECONDS = 0.01;
    private static final double MOMENT_SECONDS = 0.06;
    private static final double DROP_DB = 9;
    private static final double BACK_DB = 6;
    private static final double AFTER_SECONDS = 0.1;
    private static final double EARLIEST_SECONDS = 0.15;
    private static final double SILENCE = 1e-9;

    private Stop() {}

    /**
     * Looks for a stop.
     *
     * @param signal samples
     * @param from onset of the note
     * @param to end of what is looked at
     * @param rateHz samples per second
     * @return last sample before the stop, empty if the note dies away freely
     */
    static OptionalInt find(double[] signal, int from, int to, double rateHz) {
        int frame = (int) Math.max(1, Math.round(FRAME_SECONDS * rateHz));
        double[] level = Pluck.frames(signal, frame);
        int last = Math.min(level.length, to / frame);
        int moment = (int) Math.round(MOMENT_SECONDS / FRAME_SECONDS);
        double[] highestLater = new double[last + 1];
        for (int f = last - 1; f >= 0; f--) {
            highestLater[f] = Math.max(highestLater[f + 1], level[f]);
        }
        int after = (int) Math.round(AFTER_SECONDS / FRAME_SECONDS);
        int first = from / frame + (int) Math.round(EARLIEST_SECONDS / FRAME_SECONDS);
        for (int f = first; f + moment + after < last; f++) {
            double before = db(level[f]) - db(level[f - moment]);
            double now = db(level[f + moment]) - db(level[f]);
            if (now < Math.min(0, before) - DROP_DB && db(highestLater[f + moment]) < db(level[f]) - BACK_DB) {
                return OptionalInt.of(f * frame);
            }
        }
        return OptionalInt.empty();
    }

    private static double db(double rootMeanSquare) {
        return 20 * Math.log10(rootMeanSquare + SILENCE);
    }
}
