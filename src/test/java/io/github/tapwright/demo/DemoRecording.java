package io.github.tapwright.demo;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.NoiseLevel;
import io.github.tapwright.synthesis.SyntheticTaps;
import io.github.tapwright.synthesis.TapScene;
import java.util.Random;

/** From a sitting to its recording. */
final class DemoRecording {

    static final int RATE_HZ = 48_000;
    private static final double SPACING_SECONDS = 1.15;
    private static final double MAINS_HZ = 50;
    private static final int FULL_SCALE_24_BIT = (1 << 23) - 1;

    private DemoRecording() {}

    static SyntheticTaps of(DemoSitting sitting, BodySound sound) {
        Random random = Chance.seeded(500 + sitting.number());
        TapScene scene = TapScene.of(sound.trueModes())
                .seed(sitting.number())
                .rate(RATE_HZ)
                .direct(sound.directGain())
                .strikes(strikes(sitting), SPACING_SECONDS)
                .firstAt(0.9)
                .contact(between(random, 0.0011, 0.0018))
                .scatter(2.5, 0.04)
                .peak(between(random, -12, -8))
                .pinkishNoise(NoiseLevel.BODY_BAND, between(random, 42, 50))
                .hum(MAINS_HZ, sitting.humDbfs());
        sitting.faults().forEach(scene::fault);
        return scene.build();
    }

    /** Samples as whole numbers of 24 bits; +1 becomes the largest number there is. */
    static int[] quantised(Recording recording) {
        double[] samples = recording.channel(0);
        int[] whole = new int[samples.length];
        for (int n = 0; n < whole.length; n++) {
            whole[n] = (int) Math.round(samples[n] * FULL_SCALE_24_BIT);
        }
        return whole;
    }

    /** A spoilt tap is made good by one more. */
    private static int strikes(DemoSitting sitting) {
        return sitting.faults().isEmpty() ? 6 : 7;
    }

    private static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
