package io.github.tapwright.mode;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.tap.TapSettings;
import io.github.tapwright.tap.TapTrack;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/** What is too strange to be listed, and strong, does not go missing without a word. */
class StrongFeatureTest {

    private static final double RATE_HZ = 48_000;
    private static final int STRIKE = (int) (1.3 * RATE_HZ);

    /** The strongest sound of each tap glides, as no resonance does; a plain one 14 dB fainter rings beside it. */
    @Test
    void aStrongSoundThatIsNoSteadyResonanceIsToldOf() {
        RandomGenerator chance = Chance.seeded(3);
        double[] samples = new double[7 * STRIKE];
        for (int n = 0; n < samples.length; n++) {
            double t = (n % STRIKE) / RATE_HZ;
            boolean struck = n >= STRIKE;
            double gliding = Math.exp(-9 * t) * Math.sin(2 * Math.PI * (196 * t + 1.5 * (1 - Math.exp(-t / 0.06))));
            double steady = 0.2 * Math.exp(-20 * t) * Math.sin(2 * Math.PI * 330 * t);
            samples[n] = (struck ? 0.3 * (gliding + steady) : 0) + 3e-5 * chance.nextGaussian();
        }
        TapTrack track = TapTrack.read(Recording.of(new SampleRate(RATE_HZ), samples).stream(), TapSettings.STANDARD);

        TapResult result = TapAnalysis.analyse(List.of(track), TapSettings.STANDARD, HoleState.OPEN);

        assertThat(result.warnings())
                .anySatisfy(warning -> assertThat(warning)
                        .containsPattern(
                                "a strong feature at (19|20|21)\\d\\.\\d Hz, (0\\.0|−\\d\\.\\d) dB, is not listed: "));
    }
}
