package io.github.tapwright.audio;

import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.sitting.live.Loss;
import java.util.Optional;

/**
 * Compares the samples a line gave with the time that went by, to tell when some never came.
 *
 * <p>A sound card does not say that it threw samples away: its count simply goes on after the gap. But then it lags
 * behind the wall clock for good. The lag is elapsed time · rate − (samples read + samples waiting); its smallest
 * value in every two seconds is free of the jitter of delivery. From one such stretch to the next it drifts by less
 * than a millisecond (two quartz clocks differ by some 100 millionths at most: common practice, no source). A step is
 * a loss if the line's buffer had run full at the time, or if it is longer than any change of a system's own delay.
 */
final class LossWatch {

    private static final double STRETCH_SECONDS = 2;
    private static final double STEP_SECONDS = 0.02;
    private static final double STEP_IN_ANY_CASE_SECONDS = 0.25;
    private static final double NEARLY_FULL = 0.9;

    private final LiveFormat format;
    private final long capacityFrames;
    private long startNanos;
    private boolean started;
    private double stretchEndSeconds;
    private double smallestLag;
    private Optional<Double> lagBefore = Optional.empty();
    private double lastReadSeconds;
    private boolean ranFull;
    /** A stretch that began before the gap still has the small lag of its beginning; the step shows in the next. */
    private boolean ranFullBefore;

    LossWatch(LiveFormat format, long capacityFrames) {
        this.format = format;
        this.capacityFrames = capacityFrames;
    }

    /**
     * Takes one look at the line.
     *
     * @param nanos the wall's clock, any origin
     * @param framesRead samples of each channel read so far
     * @param framesWaiting how many more the line had ready just then
     * @return a loss, told at the end of the two seconds it was noticed in
     */
    Optional<Loss> look(long nanos, long framesRead, long framesWaiting) {
        if (!started) {
            started = true;
            startNanos = nanos;
            begin(0);
        }
        double now = (nanos - startNanos) / 1e9;
        // The read before this look took samples out, so a line that is still nearly full was full.
        ranFull |= framesWaiting >= NEARLY_FULL * capacityFrames
                || (now - lastReadSeconds) * format.rateHz() >= NEARLY_FULL * capacityFrames;
        lastReadSeconds = now;
        smallestLag = Math.min(smallestLag, now * format.rateHz() - framesRead - framesWaiting);
        if (now < stretchEndSeconds) {
            return Optional.empty();
        }
        Optional<Loss> loss = lagBefore.flatMap(before -> loss(smallestLag - before, framesRead));
        lagBefore = Optional.of(smallestLag);
        begin(now);
        return loss;
    }

    private void begin(double seconds) {
        stretchEndSeconds = seconds + STRETCH_SECONDS;
        smallestLag = Double.POSITIVE_INFINITY;
        ranFullBefore = ranFull;
        ranFull = false;
    }

    private Optional<Loss> loss(double step, long framesRead) {
        boolean wasFull = ranFull || ranFullBefore;
        double limit = (wasFull ? STEP_SECONDS : STEP_IN_ANY_CASE_SECONDS) * format.rateHz();
        if (step < limit) {
            return Optional.empty();
        }
        double at = Math.max(0, (double) framesRead / format.rateHz() - STRETCH_SECONDS);
        String reason = wasFull
                ? "the computer was too busy to fetch it; close other programs"
                : "the sound card paused or the computer slept";
        return Optional.of(new Loss(at, Math.round(step), reason));
    }
}
