package io.github.tapwright.level.broadcast;

import java.util.Arrays;

/**
 * The weighted power of a programme in steps of 10 ms, and its mean over any run of steps.
 *
 * <p>A step ends at the sample nearest to a multiple of 10 ms, so any rate works and long programmes do not
 * drift. One hour takes 2.9 MB.
 */
final class PowerSteps {

    static final int STEPS_PER_SECOND = 100;

    private final double rateHz;
    private double[] meanSquares = new double[1024];
    private int finished;
    private double energy;
    private long taken;
    private long stepStart;

    PowerSteps(double rateHz) {
        this.rateHz = rateHz;
    }

    /** Takes the weighted power of the next samples. */
    void take(double[] power, int count) {
        long end = stepEnd();
        for (int n = 0; n < count; n++) {
            energy += power[n];
            taken++;
            if (taken == end) {
                finishStep();
                end = stepEnd();
            }
        }
    }

    int count() {
        return finished;
    }

    /** Lets silence follow what was taken. */
    void addSilence(int steps) {
        if (finished + steps > meanSquares.length) {
            meanSquares = Arrays.copyOf(meanSquares, finished + steps);
        }
        Arrays.fill(meanSquares, finished, finished + steps, 0);
        finished += steps;
    }

    /** Mean squares of every run of {@code length} steps, one run every {@code hop} steps. */
    double[] means(int length, int hop) {
        double[] means = new double[finished < length ? 0 : (finished - length) / hop + 1];
        for (int k = 0; k < means.length; k++) {
            means[k] = Arrays.stream(meanSquares, k * hop, k * hop + length).sum() / length;
        }
        return means;
    }

    private long stepEnd() {
        return Math.round((finished + 1) * rateHz / STEPS_PER_SECOND);
    }

    private void finishStep() {
        if (finished == meanSquares.length) {
            meanSquares = Arrays.copyOf(meanSquares, 2 * finished);
        }
        meanSquares[finished++] = energy / (taken - stepStart);
        stepStart = taken;
        energy = 0;
    }
}
