package io.github.tapwright.tap;

import java.util.Arrays;

/**
 * The smallest step between two samples in a row, for each octave of their size: how coarsely a recording is written.
 *
 * <p>The same at all heights for integers of some bits; of companded samples it grows with their size, so that each octave
 * is watched by itself. Nothing needs to be known of the file's format, and an 8 bit sound kept in 16 bits is seen as what it is.
 * In a fine recording the smallest step met so far is chance and does not come again; where it does, it is the writing's.
 */
final class SmallestSteps {

    private static final int OCTAVES = 32;
    private static final int OFTEN = 3;
    private static final float SAME = 1e-3f;

    private final float[] smallest;
    private final int[] times;

    private SmallestSteps(float[] smallest, int[] times) {
        this.smallest = smallest;
        this.times = times;
    }

    SmallestSteps() {
        this(new float[OCTAVES], new int[OCTAVES]);
        Arrays.fill(smallest, Float.POSITIVE_INFINITY);
    }

    SmallestSteps copy() {
        return new SmallestSteps(smallest.clone(), times.clone());
    }

    /** Takes two samples in a row that differ. */
    void take(double first, double second) {
        int octave = octave(Math.min(Math.abs(first), Math.abs(second)));
        float step = (float) Math.abs(first - second);
        if (step < (1 - SAME) * smallest[octave]) {
            smallest[octave] = step;
            times[octave] = 1;
        } else if (step <= (1 + SAME) * smallest[octave]) {
            times[octave]++;
        }
    }

    /** The writing's step at this size: of its octave, or twice that of the next below where one came often; 0 if none did. */
    double at(double size) {
        int top = octave(Math.abs(size));
        int octave = top;
        while (octave > 0 && times[octave] < OFTEN) {
            octave--;
        }
        return times[octave] < OFTEN ? 0 : Math.scalb(smallest[octave], top - octave);
    }

    private static int octave(double size) {
        return Math.max(0, Math.min(OCTAVES - 1, OCTAVES - 2 + Math.getExponent(size)));
    }
}
