package io.github.tapwright.note;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.StringNote;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Decay curves that are none are refused with their reason, and a crooked one is known the less. */
class EnergyDecayTest {

    private static final double RATE_HZ = 8000;

    private static WholeDecay decay(double noise, IntToDoubleFunction sample) {
        double[] x = IntStream.range(0, 8000).mapToDouble(sample).toArray();
        return new EnergyDecay(x, 0, x.length, RATE_HZ, 4000, new NoiseFloor(noise, 1000)).times();
    }

    private static void isRefused(WholeDecay decay, String reason) {
        assertThat(decay.early().refusal().orElseThrow()).contains(reason);
        assertThat(decay.t20().refusal().orElseThrow()).contains(reason);
        assertThat(decay.heardDb()).isZero();
    }

    @Test
    void aToneThatDoesNotFallHasNoDecay() {
        isRefused(decay(1e-9, n -> Math.sin(0.3 * Math.PI * n)), "does not fall");
        isRefused(decay(1e-9, n -> (1 + n / 4000.0) * Math.sin(0.3 * Math.PI * n)), "does not fall");
        isRefused(decay(0, n -> 0), "does not fall");
    }

    @Test
    void whatLiesUnderTheNoiseIsRefused() {
        isRefused(decay(0.02, n -> Math.exp(-n / 200.0)), "too noisy");
    }

    @Test
    void silenceAfterAnInstantIsNoRange() {
        assertThat(decay(1e-12, n -> n < 40 ? Math.exp(-n / 3.0) : 0).t20().found())
                .isEmpty();
    }

    @Test
    void theDoubtOfACrookedDecayCoversHowCrookedItIs() {
        StringNote straight = StringNote.plain(196, 5e-5, 1.0, 4);
        StringNote crooked = straight.inTwoPlanes(4, 0.3, 0);
        assertThat(relativeDoubt(straight)).isLessThan(0.01);
        assertThat(relativeDoubt(crooked)).isGreaterThan(0.015);
    }

    private static double relativeDoubt(StringNote string) {
        DecayTime t20 = NoteAnalysis.analyse(string.recording(22_050, Chance.seeded(6)).stream(), NoteSettings.STANDARD)
                .decay()
                .t20()
                .found()
                .orElseThrow();
        return t20.seconds().standardUncertainty() / t20.seconds().value();
    }
}
