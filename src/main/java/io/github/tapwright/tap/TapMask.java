package io.github.tapwright.tap;

import java.util.Arrays;
import java.util.List;

/** Which samples of a track belong to a tap and its ringing, so that the rest shows the room. */
final class TapMask {

    private static final double BEFORE_SECONDS = 0.01;
    private static final double RINGING_SECONDS = 0.6;

    private TapMask() {}

    /** True where a tap sounds, shape as the track's signal. */
    static boolean[] of(TapTrack track, List<Contact> contacts) {
        boolean[] tap = new boolean[track.signal().length];
        double rate = track.decimatedRateHz();
        for (Contact c : contacts) {
            int from = (int) Math.max(0, (c.onsetSeconds() - BEFORE_SECONDS) * rate);
            int to = (int) Math.min(tap.length, (c.onsetSeconds() + RINGING_SECONDS) * rate);
            Arrays.fill(tap, Math.min(from, to), to, true);
        }
        return tap;
    }
}
