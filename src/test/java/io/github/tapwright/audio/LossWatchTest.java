package io.github.tapwright.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.sitting.live.Loss;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LossWatchTest {

    private static final int RATE = 48_000;
    private static final int CAPACITY = RATE / 2;

    private final LossWatch watch = new LossWatch(LiveFormat.STANDARD, CAPACITY);
    private final Random random = new Random(3);
    private final List<Loss> losses = new ArrayList<>();
    private double seconds;
    private double given;
    private long lost;

    /** A line on a clock of its own that is fast by some millionths, read every 20 ms or so. */
    private void runFor(double duration, double fastPpm) {
        double end = seconds + duration;
        while (seconds < end) {
            step(0.02 + 0.003 * random.nextDouble(), fastPpm, 0.005 * random.nextDouble());
        }
    }

    private void step(double time, double fastPpm, double delay) {
        seconds += time;
        given += time * RATE * (1 + fastPpm * 1e-6);
        long ready = (long) (given - lost - delay * RATE);
        watch.look((long) (seconds * 1e9), ready - ready % 960, ready % 960).ifPresent(losses::add);
    }

    @Test
    void clocksThatDifferAndJitterAreNoLoss() {
        runFor(600, -150);
        runFor(600, 150);

        assertThat(losses).isEmpty();
    }

    @Test
    void samplesThatNeverCameAreCounted() {
        runFor(60, 40);
        seconds += 0.6; // the reader came late: the line was full after half a second
        given += 0.6 * RATE;
        lost = 7_000;
        runFor(60, 40);

        assertThat(losses).hasSize(1);
        assertThat((double) losses.get(0).frames()).isCloseTo(7_000, within(500.0));
        assertThat(losses.get(0).atSeconds()).isCloseTo(60, within(3.0));
        assertThat(losses.get(0).reason()).contains("too busy");
    }

    @Test
    void aLongGapIsALossEvenIfTheLineNeverLookedFull() {
        runFor(30, 0);
        lost = RATE;
        runFor(30, 0);

        assertThat(losses).hasSize(1);
        assertThat((double) losses.get(0).frames()).isCloseTo(RATE, within(500.0));
    }
}
