package io.github.tapwright.mode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.tap.TapSettings;
import io.github.tapwright.tap.TapTrack;
import java.util.List;
import java.util.Random;
import java.util.random.RandomGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * One short stroke that starts on the hit, scaled and rounded to 16 bits anew, must give the same resonances.
 *
 * <p>Tolerance 1 part in 1,000: rounding at these levels lies 60 dB and more under the ringing, worth some
 * 3 parts in 10,000 of Q by the Cramér-Rao bound.
 */
class ScaledRecordingPropertyTest {

    private static final double RATE_HZ = 44_100;
    private static final double[][] MODES = {{131.7, 34, 1}, {218, 28, 0.7}, {344.2, 60, 0.8}, {612, 45, 0.4}};

    @ParameterizedTest
    @ValueSource(doubles = {-1, -3, -6, -9, -12})
    void gainMovesNothing(double gainDb) {
        List<Resonance> full = resonances(0);
        List<Resonance> scaled = resonances(gainDb);
        assertThat(full).hasSize(MODES.length);
        assertThat(scaled).hasSameSizeAs(full);
        for (int i = 0; i < full.size(); i++) {
            assertRatio(scaled.get(i).frequencyHz().value()
                    / full.get(i).frequencyHz().value());
            assertRatio(scaled.get(i).q().value() / full.get(i).q().value());
            assertThat(full.get(i).frequencyHz().value()).isCloseTo(MODES[i][0], within(0.05));
        }
    }

    private static void assertRatio(double ratio) {
        assertThat(ratio).isCloseTo(1, within(1e-3));
    }

    private static List<Resonance> resonances(double gainDb) {
        RandomGenerator chance = Chance.seeded(3);
        double[] phases = new Random(4).doubles(MODES.length).toArray();
        double gain = 8000 * Math.pow(10, gainDb / 20);
        double[] x = new double[(int) (0.4 * RATE_HZ)];
        for (int n = 0; n < x.length; n++) {
            double t = n / RATE_HZ;
            double sum = 0;
            for (int m = 0; m < MODES.length; m++) {
                double omega = 2 * Math.PI * MODES[m][0];
                sum += MODES[m][2]
                        * Math.exp(-omega * t / (2 * MODES[m][1]))
                        * Math.sin(omega * t + 2 * Math.PI * phases[m]);
            }
            x[n] = Math.rint(gain * sum + chance.nextDouble() - 0.5) / 32768;
        }
        TapTrack track = TapTrack.read(Recording.of(new SampleRate(RATE_HZ), x).stream(), TapSettings.STANDARD);
        return TapAnalysis.analyse(List.of(track), TapSettings.STANDARD, HoleState.UNKNOWN).resonances().stream()
                .map(NamedResonance::resonance)
                .toList();
    }
}
