package io.github.tapwright.sitting.live;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.synthesis.PlantedFault;
import io.github.tapwright.synthesis.SyntheticTaps;
import io.github.tapwright.synthesis.TapScene;
import io.github.tapwright.synthesis.TrueMode;
import java.util.Arrays;

/** Taps on an invented body, and ways to feed them. */
final class Invented {

    private Invented() {}

    /** Seven taps 1.3 s apart, the third a double strike. */
    static Recording taps() {
        return scene(7).build().recording();
    }

    /** A minute and a half of them. */
    static SyntheticTaps manyTaps() {
        return scene(68).build();
    }

    private static TapScene scene(int count) {
        return TapScene.of(
                        TrueMode.resonator(102, 22, 0.5),
                        TrueMode.resonator(196, 30, 1),
                        TrueMode.resonator(248, 26, 0.4),
                        TrueMode.resonator(402, 35, 0.5))
                .strikes(count, 1.3)
                .fault(2, PlantedFault.DOUBLE_STRIKE);
    }

    /** Feeds the samples from one moment to another in blocks of 20 ms. */
    static void feed(FollowTaps follow, Recording recording, double fromSeconds, double toSeconds) {
        int rate = (int) recording.sampleRate().hertz();
        double[] x = recording.channel(0);
        int block = rate / 50;
        int end = (int) Math.min(x.length, toSeconds * rate);
        for (int n = (int) (fromSeconds * rate); n < end; n += block) {
            follow.feed(new double[][] {Arrays.copyOfRange(x, n, Math.min(end, n + block))});
        }
    }
}
