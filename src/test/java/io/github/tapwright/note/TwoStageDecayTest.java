package io.github.tapwright.note;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.StringNote;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Decay of single partials; truth from the synthesis itself. */
class TwoStageDecayTest {

    private static final double RATE_HZ = 22_050;

    private static List<Partial> partials(StringNote string, long seed) {
        return NoteAnalysis.analyse(string.recording(RATE_HZ, Chance.seeded(seed)).stream(), NoteSettings.STANDARD)
                .partials();
    }

    @ParameterizedTest
    @ValueSource(doubles = {82.4, 146.8, 329.6})
    void bothDecayTimesOfTheFirstFivePartialsAreRightToFivePerCent(double pitchHz) {
        StringNote string = StringNote.plain(pitchHz, 5e-5, 1.0, 5)
                .inTwoPlanes(5.0, 0.25, 0)
                .damped(0.05);
        List<Partial> partials = partials(string, 21);
        for (int n = 1; n <= 5; n++) {
            PartialDecay decay = partials.get(n - 1).decay();
            assertThat(decay).isInstanceOf(PartialDecay.TwoStage.class);
            PartialDecay.TwoStage two = (PartialDecay.TwoStage) decay;
            assertThat(two.earlyDecayTimeSeconds().value())
                    .isCloseTo(string.earlySeconds(n), Percentage.withPercentage(5));
            assertThat(two.lateDecayTimeSeconds().value())
                    .isCloseTo(string.lateSeconds(n), Percentage.withPercentage(5));
            assertThat(two.lateLevelDb().value()).isCloseTo(20 * Math.log10(0.25), within(1.0));
            assertThat(two.beats()).isFalse();
        }
    }

    @Test
    void beatsOfTwoPlanesAreModelledAndNamed() {
        // 2.13 cents at B3 beat once in 3.3 s [Woodhouse2004]
        StringNote string = StringNote.plain(246.9, 5e-5, 6, 5).inTwoPlanes(7, 0.8, 2.13);
        PartialDecay.TwoStage two =
                (PartialDecay.TwoStage) partials(string, 4).get(0).decay();
        assertThat(two.beats()).isTrue();
        assertThat(two.beatHz().value()).isCloseTo(0.304, within(0.003));
        assertThat(two.earlyDecayTimeSeconds().value()).isCloseTo(6, Percentage.withPercentage(5));
        assertThat(two.lateDecayTimeSeconds().value()).isCloseTo(7, Percentage.withPercentage(5));
    }

    /** The fast plane is 26 dB below the slow one from the start: they differ by 0.9 Hz, and nobody hears a beat. */
    @Test
    void planesOfUnlikeStrengthDoNotBeat() {
        StringNote string = StringNote.plain(246.9, 5e-5, 3, 5).inTwoPlanes(7, 20, 6);
        PartialDecay.TwoStage two =
                (PartialDecay.TwoStage) partials(string, 4).get(0).decay();
        assertThat(two.beatHz().value()).isCloseTo(0.857, within(0.05));
        assertThat(two.beats()).isFalse();
    }

    @Test
    void oneStageStaysOne() {
        StringNote string = StringNote.plain(196, 5e-5, 2.5, 3).damped(0.1);
        List<Partial> partials = partials(string, 8);
        assertThat(partials).hasSizeGreaterThan(15);
        long two = partials.stream()
                .filter(p -> p.decay() instanceof PartialDecay.TwoStage)
                .count();
        assertThat(two).isLessThanOrEqualTo(1);
        PartialDecay.OneStage first = (PartialDecay.OneStage) partials.get(0).decay();
        assertThat(first.decayTimeSeconds().value()).isCloseTo(2.5, Percentage.withPercentage(1));
    }

    @Test
    void aDecayTheRecordingDoesNotHoldIsRefusedWithItsReason() {
        // 0.3 s of a string that needs 12 s for 60 dB fall by 1.4 dB
        StringNote string = StringNote.plain(196, 5e-5, 12, 0.3);
        assertThat(partials(string, 8).get(0).decay())
                .isInstanceOfSatisfying(
                        PartialDecay.Refused.class, r -> assertThat(r.reason()).contains("falls by 1."));
    }

    @Test
    void theLevelIsThatJustAfterThePluck() {
        double[] x = new double[44_100];
        for (int n = 4410; n < x.length; n++) {
            double t = (n - 4410) / 22_050.0;
            for (int k = 1; k <= 6; k++) {
                x[n] += 0.1 / k * Math.exp(-5 * t) * Math.sin(2 * Math.PI * 220 * k * t + k);
            }
        }
        NoteResult result = NoteAnalysis.analyse(Sound.of(22_050, x), NoteSettings.STANDARD);
        assertThat(result.partials().get(0).levelDb().value()).isCloseTo(-20, within(0.1));
        assertThat(result.partials().get(1).levelDb().value()).isCloseTo(-26.02, within(0.1));
        // Σ f·a/Σ a with a = 1/k: 6·220/(1 + 1/2 + … + 1/6) = 538.8 Hz
        assertThat(result.spectralCentroidHz().found().orElseThrow()).isCloseTo(538.8, within(2.0));
    }
}
