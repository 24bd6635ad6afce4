package io.github.tapwright.tap;

import java.util.Arrays;

/**
 * For every millisecond of a recording: its largest sample, and how many samples in a row were clipped.
 *
 * <p>Clipping shows in two ways: three or more samples in a row at full scale, or a flat top lower down
 * (an overloaded preamplifier): three or more equal samples with steep sides. A wave's natural top is
 * flat too where steps are coarse, but its sides are shallow there, so the step into and out of the flat
 * must be at least 0.2 % of the top, and more of the writing's {@link SmallestSteps} than a parabola falls by at the next
 * sample whose m = 2h + 1 samples lie within one step: 1 + (2h + 1)/h², four for m = 3. This asks more than {@link io.github.tapwright.signal.FullScaleRun},
 * because a strike cut flat at any height spoils the fit, and one strike more or less costs little.
 */
final class PeakFrames {

    private static final double FULL_SCALE = 0.9995;
    private static final int SHORTEST_RUN = 3;
    private static final double STEEP = 0.002;
    private static final double QUIETEST_FLAT_TOP = 0.05;

    private static final double LOWEST_CEILING = 0.5;

    private final int frameLength;
    private final double rateHz;
    private float[] peak = new float[1024];
    private short[] clippedRun = new short[1024];
    private float[] sideOfRun = new float[1024];
    private SmallestSteps steps = new SmallestSteps();
    private long position;
    private double previous;
    private double beforeRun;
    private int run = 1;

    PeakFrames(double rateHz) {
        this.rateHz = rateHz;
        this.frameLength = frameLength(rateHz);
    }

    /** Samples in a millisecond. */
    static int frameLength(double rateHz) {
        return (int) Math.max(1, Math.round(rateHz / 1000));
    }

    /** A finished copy of what was heard from a sample on, whose times count from there. */
    PeakFrames from(long sample) {
        PeakFrames part = new PeakFrames(rateHz);
        int first = (int) (sample / frameLength);
        int end = Math.max(first + 1, (int) (position / frameLength) + 1);
        part.peak = Arrays.copyOfRange(peak, first, end);
        part.clippedRun = Arrays.copyOfRange(clippedRun, first, end);
        part.sideOfRun = Arrays.copyOfRange(sideOfRun, first, end);
        part.steps = steps.copy();
        part.position = Math.max(0, position - sample);
        part.previous = previous;
        part.beforeRun = beforeRun;
        part.run = run;
        part.finish();
        return part;
    }

    void append(double[] block, int n) {
        for (int i = 0; i < n; i++) {
            double x = block[i];
            int frame = frame(position++);
            peak[frame] = Math.max(peak[frame], (float) Math.abs(x));
            boolean bothFull = Math.abs(x) >= FULL_SCALE && Math.abs(previous) >= FULL_SCALE && x * previous > 0;
            if (x == previous || bothFull) {
                run++;
            } else {
                endRun(x, frame);
                steps.take(previous, x);
                beforeRun = previous;
                run = 1;
            }
            previous = x;
        }
    }

    void finish() {
        endRun(0, frame(Math.max(0, position - 1)));
    }

    private int frame(long sample) {
        int frame = (int) (sample / frameLength);
        if (frame >= peak.length) {
            peak = Arrays.copyOf(peak, 2 * peak.length);
            clippedRun = Arrays.copyOf(clippedRun, peak.length);
            sideOfRun = Arrays.copyOf(sideOfRun, peak.length);
        }
        return frame;
    }

    private void endRun(double next, int frame) {
        if (run < SHORTEST_RUN) {
            return;
        }
        double top = Math.abs(previous);
        boolean outermost = (previous - beforeRun) * (previous - next) > 0 && previous * (previous - next) > 0;
        double side = Math.min(Math.abs(previous - beforeRun), Math.abs(previous - next));
        if (top >= FULL_SCALE || (top >= QUIETEST_FLAT_TOP && outermost && side > STEEP * top)) {
            note(frame, run, (float) side);
        }
    }

    /** Of two flats within a millisecond the steeper one is kept. */
    private void note(int frame, int length, float side) {
        if (clippedRun[frame] == 0 || side > sideOfRun[frame]) {
            clippedRun[frame] = (short) Math.min(Short.MAX_VALUE, length);
            sideOfRun[frame] = side;
        }
    }

    /** Largest sample between two times, re full scale. */
    double largest(double fromSeconds, double toSeconds) {
        double largest = 0;
        for (int f = first(fromSeconds); f < last(toSeconds); f++) {
            largest = Math.max(largest, peak[f]);
        }
        return largest;
    }

    /** Longest run of clipped samples between two times, 0 if none; a flat that half the strike's height rises above is no ceiling. */
    int longestClippedRun(double fromSeconds, double toSeconds) {
        double lowestCeiling = LOWEST_CEILING * largest(fromSeconds, toSeconds);
        int longest = 0;
        for (int f = first(fromSeconds); f < last(toSeconds); f++) {
            if (peak[f] >= lowestCeiling && isCeiling(f)) {
                longest = Math.max(longest, clippedRun[f]);
            }
        }
        return longest;
    }

    private boolean isCeiling(int frame) {
        double step = steps.at(peak[frame]);
        boolean full = peak[frame] >= FULL_SCALE || peak[frame] + step >= 1;
        return full || sideOfRun[frame] > naturalSteps(clippedRun[frame]) * step;
    }

    /** Whether flat tops below full scale can pass unseen, because the samples are written so coarsely. */
    boolean isCoarse() {
        double top = largest(0, position / rateHz);
        return top >= QUIETEST_FLAT_TOP && steps.at(top) > STEEP * top;
    }

    private static double naturalSteps(int run) {
        double half = Math.max(1, (run - 1) / 2.0);
        return 1.01 + Math.floor((2 * half + 1) / (half * half)); // the hundredth for rounding
    }

    private int first(double seconds) {
        return (int) Math.max(0, Math.floor(seconds * rateHz / frameLength));
    }

    private int last(double seconds) {
        return (int) Math.min(peak.length, Math.ceil(seconds * rateHz / frameLength) + 1);
    }
}
