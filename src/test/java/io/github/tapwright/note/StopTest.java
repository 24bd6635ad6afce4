package io.github.tapwright.note;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.StringNote;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A string stopped by hand is analysed up to the stop; a free one, even one that beats, to its end. */
class StopTest {

    private static final double RATE_HZ = 44_100;

    private static NoteResult analyse(double[] x) {
        return NoteAnalysis.analyse(Recording.of(new SampleRate(RATE_HZ), x).stream(), NoteSettings.STANDARD);
    }

    private static double[] stopped(double stopSeconds, long seed) {
        double[] x = StringNote.plain(110.5, 1e-5, 2.5, 2).inNoise(90, 0.2).samples(RATE_HZ, Chance.seeded(seed));
        RandomGenerator chance = Chance.seeded(seed + 100);
        int stop = (int) (stopSeconds * RATE_HZ);
        for (int n = 0; n < x.length; n++) {
            x[n] *= Math.max(0, Math.min(1, 1 - (n - stop) / (0.025 * RATE_HZ)));
            x[n] += 2e-5 * chance.nextGaussian();
        }
        return x;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.8, 1.2, 1.6})
    void theDecayBeforeAStopIsMeasured(double stopSeconds) {
        NoteResult result = analyse(stopped(stopSeconds, 5));
        assertThat(result.disturbance()).hasValueSatisfying(d -> {
            assertThat(d.kind()).isEqualTo(Disturbance.Kind.STOP);
            assertThat(d.atSeconds()).isCloseTo(stopSeconds, within(0.07));
        });
        assertThat(result.partials().get(0).decay())
                .isInstanceOfSatisfying(
                        PartialDecay.OneStage.class,
                        d -> assertThat(d.decayTimeSeconds().value()).isCloseTo(2.5, within(0.05)));
    }

    @Test
    void aFreeStringIsNotStopped() {
        double[] free = StringNote.plain(110.5, 1e-5, 1.2, 3).inNoise(60, 0.2).samples(RATE_HZ, Chance.seeded(6));
        assertThat(analyse(free).disturbance()).isEmpty();
    }

    @Test
    void beatsThatReturnAreNoStop() {
        double[] beating = StringNote.plain(110.5, 1e-5, 3, 3)
                .inTwoPlanes(3.2, 0.95, 60)
                .inNoise(60, 0.2)
                .samples(RATE_HZ, Chance.seeded(7));
        assertThat(analyse(beating).disturbance().map(Disturbance::kind))
                .isNotEqualTo(java.util.Optional.of(Disturbance.Kind.STOP));
    }
}
