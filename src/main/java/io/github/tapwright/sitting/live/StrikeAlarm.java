package io.github.tapwright.sitting.live;

/**
 * Says cheaply when a look for strikes is worth while: where the sound leaps up. What a strike is and whether it can
 * be used is not decided here.
 */
final class StrikeAlarm {

    private static final double STEP_SECONDS = 0.005;
    private static final int STEPS_BEFORE = 8;
    private static final double LEAP = 2.5;
    private static final double REST_SECONDS = 0.13;

    private final double rateHz;
    private final int stepFrames;
    private final double[] before = new double[STEPS_BEFORE];
    private int step;
    private double peak;
    private int frames;
    private long position;
    private double lastSeconds = Double.NEGATIVE_INFINITY;

    StrikeAlarm(double rateHz) {
        this.rateHz = rateHz;
        this.stepFrames = (int) (STEP_SECONDS * rateHz);
    }

    /** Takes the next samples; true if a leap was among them, which {@link #lastSeconds} then tells. */
    boolean feed(double[][] samples) {
        boolean heard = false;
        for (int n = 0; n < samples[0].length; n++) {
            for (double[] channel : samples) {
                peak = Math.max(peak, Math.abs(channel[n]));
            }
            position++;
            if (++frames == stepFrames) {
                heard |= endStep();
            }
        }
        return heard;
    }

    private boolean endStep() {
        double largest = 0;
        for (double earlier : before) {
            largest = Math.max(largest, earlier);
        }
        double now = position / rateHz;
        boolean leapt = peak > LEAP * largest && now - lastSeconds > REST_SECONDS && step >= STEPS_BEFORE;
        if (leapt) {
            lastSeconds = now;
        }
        before[step++ % STEPS_BEFORE] = peak;
        peak = 0;
        frames = 0;
        return leapt;
    }

    double lastSeconds() {
        return lastSeconds;
    }
}
