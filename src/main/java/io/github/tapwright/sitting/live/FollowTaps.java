package io.github.tapwright.sitting.live;

import io.github.tapwright.mode.HoleState;
import io.github.tapwright.tap.GrowingTrack;
import io.github.tapwright.tap.SetAside;
import io.github.tapwright.tap.TapSettings;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * Follows taps while they are recorded: fed block by block, it says when a strike's window has ended and what the
 * taps say by then.
 *
 * <p>The recording is cut into segments of some ten seconds. Each is listened to once; the strikes of the segments of
 * the last minute are then judged together and averaged by the very methods of the ordinary analysis, and older
 * strikes keep the verdict they had. So a look takes no longer in a long sitting than in a short one. It has no thread of its own: whoever uses several calls it from one at a time.
 * A {@link TapLook} may be worked on elsewhere meanwhile.
 */
public final class FollowTaps {

    /** Segments are kept so long. */
    private static final double LOOK_SECONDS = 60;

    private static final double SEGMENT_SECONDS = 10;
    private static final double LONGEST_SEGMENT_SECONDS = 20;
    private static final double REST_BEFORE_STRIKE_SECONDS = 0.3;
    private static final double BEFORE_STRIKE_SECONDS = 0.25;
    private static final double SHORTLY_BEFORE_STRIKE_SECONDS = 0.03;
    private static final double REMEMBERED_SECONDS = 3 * LONGEST_SEGMENT_SECONDS;

    /** A contact and what the finding of strikes needs to hear after a window. */
    private static final double AFTER_WINDOW_SECONDS = 0.04;
    /** A look at the room alone finds hum and has the machine warmed up before the first tap. */
    private static final double ROOM_SECONDS = 2;

    private static final int LARGEST_BLOCK = 32_768;

    private final HoleState hole;
    private final GrowingTrack track;
    private final StrikeAlarm alarm;
    private final Deque<Double> windowEnds = new ArrayDeque<>();
    private final List<Segment> closed = new ArrayList<>();
    private double openFromSeconds;
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
        this.track = new GrowingTrack(format.sampleRate(), format.channelCount(), settings, REMEMBERED_SECONDS);
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
        Segment open = new Segment(track.part(openFromSeconds, Double.POSITIVE_INFINITY));
        return new TapLook(closed, open, settings, hole, known);
    }

    /**
     * Takes over what a look has shown.
     *
     * @param verdicts of a look of this object
     */
    public void know(TapLook.Verdicts verdicts) {
        known = verdicts.shown();
        double length = track.completeSeconds() - openFromSeconds;
        if (length > SEGMENT_SECONDS) {
            cut(verdicts.openOnsetsSeconds(), length > LONGEST_SEGMENT_SECONDS);
        }
    }

    /** Ends the open segment in a quiet moment before a strike; where there is none, right before the last strike. */
    private void cut(List<Double> onsets, boolean mustBe) {
        double rest = settings.longestDecaySeconds() + REST_BEFORE_STRIKE_SECONDS;
        for (int i = onsets.size() - 1; i > 0; i--) {
            if (onsets.get(i) - onsets.get(i - 1) > rest) {
                close(onsets.get(i) - BEFORE_STRIKE_SECONDS);
                return;
            }
        }
        if (mustBe) {
            double now = track.completeSeconds();
            close(onsets.isEmpty() ? now - 1 : onsets.get(onsets.size() - 1) - SHORTLY_BEFORE_STRIKE_SECONDS);
        }
    }

    private void close(double seconds) {
        GrowingTrack.Part part = track.part(openFromSeconds, seconds);
        closed.add(new Segment(part));
        openFromSeconds = part.endSeconds();
        closed.removeIf(s -> s.endSeconds() < openFromSeconds - LOOK_SECONDS);
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
            invented.know(invented.look().verdicts());
        }
    }
}
