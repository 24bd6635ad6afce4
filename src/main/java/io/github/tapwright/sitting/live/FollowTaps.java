package io.github.tapwright.sitting.live;

import io.github.tapwright.mode.HoleState;
import io.github.tapwright.tap.GrowingTrack;
import io.github.tapwright.tap.SetAside;
import io.github.tapwright.tap.TapSettings;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * Follows taps while they are recorded: fed block by block, it says when a strike's window has ended and what the
 * taps say by then.
 *
 * <p>The strikes of the last minute are found, judged and averaged by the very methods of the ordinary analysis;
 * older ones keep the verdict they had. It has no thread of its own: whoever uses several calls it from one at a time.
 * A {@link TapLook} may be worked on elsewhere meanwhile.
 */
public final class FollowTaps {

    /** What one look covers, so that it takes no longer in a long sitting than in a short one. */
    static final double LOOK_SECONDS = 60;

    /** A contact and what the finding of strikes needs to hear after a window. */
    private static final double AFTER_WINDOW_SECONDS = 0.04;
    /** A look at the room alone finds hum and has the machine warmed up before the first tap. */
    private static final double ROOM_SECONDS = 2;
    private static final double BEFORE_STRIKE_SECONDS = 0.25;
    private static final int LARGEST_BLOCK = 32_768;

    private final HoleState hole;
    private final GrowingTrack track;
    private final StrikeAlarm alarm;
    private final Deque<Double> windowEnds = new ArrayDeque<>();
    private TapSettings settings;
    private TapsSoFar known = TapsSoFar.NOTHING;
    private boolean due;

    /**
     * Nothing heard yet.
     *
     * @param format of the blocks
     * @param settings what to look for; strikes already set aside are those of source 0
     * @param hole whether the soundhole is open
     */
    public FollowTaps(LiveFormat format, TapSettings settings, HoleState hole) {
        this.settings = settings;
        this.hole = hole;
        this.track = new GrowingTrack(format.sampleRate(), format.channelCount(), settings, LOOK_SECONDS + 5);
        this.alarm = new StrikeAlarm(format.rateHz());
        windowEnds.add(ROOM_SECONDS);
    }

    /**
     * Takes the next sound.
     *
     * @param block in this object's format
     */
    public void feed(SoundBlock block) {
        feed(block.samples());
    }

    void feed(double[][] samples) {
        if (samples[0].length > LARGEST_BLOCK) {
            throw new IllegalArgumentException("a block holds at most " + LARGEST_BLOCK + " samples");
        }
        track.append(samples, samples[0].length);
        if (alarm.feed(samples)) {
            windowEnds.add(alarm.lastSeconds() + settings.longestDecaySeconds() + AFTER_WINDOW_SECONDS);
        }
        while (!windowEnds.isEmpty() && windowEnds.peekFirst() <= track.completeSeconds()) {
            windowEnds.removeFirst();
            due = true;
        }
    }

    /**
     * Whether a strike's window has ended, or a strike was set aside, since the last look.
     *
     * @return true if a look is worth while
     */
    public boolean isDue() {
        return due;
    }

    /**
     * Sets strikes aside or takes them back; the recording stays as it is.
     *
     * @param strikes all that are not wanted, times from the start of the recording
     */
    public void setAside(List<SetAside> strikes) {
        settings = settings.withSetAside(strikes);
        due = true;
    }

    /**
     * Takes a copy of what was heard, to be worked on.
     *
     * @return a look
     */
    public TapLook look() {
        due = false;
        double now = track.completeSeconds();
        double from = known.strikes().stream()
                .mapToDouble(s -> s.onsetSeconds() - BEFORE_STRIKE_SECONDS)
                .filter(s -> s > now - LOOK_SECONDS)
                .findFirst()
                .orElse(now - LOOK_SECONDS);
        return new TapLook(track.last(now <= LOOK_SECONDS ? 0 : Math.max(0, from)), settings, hole, known);
    }

    /**
     * Takes over what a look has shown.
     *
     * @param shown by a look of this object
     */
    public void know(TapsSoFar shown) {
        known = shown;
    }

    /**
     * Goes once through everything a look does, on invented taps: the first time takes several times as long, and the
     * maker's first tap should not wait for it.
     */
    static void rehearse() {
        FollowTaps invented = new FollowTaps(LiveFormat.STANDARD, TapSettings.STANDARD, HoleState.UNKNOWN);
        double rate = LiveFormat.STANDARD.rateHz();
        double[][] second = new double[1][(int) rate];
        for (int n = 0; n < second[0].length; n++) {
            double t = n / rate - 0.1;
            second[0][n] = 1e-5 * Math.sin(n * (double) n)
                    + (t < 0 ? 0 : 0.3 * Math.exp(-25 * t) * Math.sin(2 * Math.PI * 180 * t));
        }
        int rounds = 3;
        for (int round = 0; round < rounds; round++) {
            for (int from = 0; from < second[0].length; from += LARGEST_BLOCK) {
                int to = Math.min(second[0].length, from + LARGEST_BLOCK);
                invented.feed(new double[][] {Arrays.copyOfRange(second[0], from, to)});
            }
            invented.know(invented.look().verdicts().shown());
        }
    }
}
