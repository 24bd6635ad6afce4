package io.github.tapwright.mode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.synthesis.CramerRao;
import io.github.tapwright.synthesis.NoiseLevel;
import io.github.tapwright.synthesis.SyntheticTaps;
import io.github.tapwright.synthesis.TapScene;
import io.github.tapwright.synthesis.TrueMode;
import io.github.tapwright.tap.TapSettings;
import io.github.tapwright.tap.TapTrack;
import io.github.tapwright.validation.PublishedRow;
import io.github.tapwright.validation.PublishedTable;
import java.util.List;
import java.util.Locale;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Taps on a guitar of two moving parts, top and air, heard by a microphone and analysed whole.
 *
 * <p>The sound is the exact pressure of the damped model: its two poles with their residues, and what follows the
 * force at once, for half-sine contacts of 1.5 ms on eight different strikes in white noise. The true poles and
 * residues come from matrices in another program (validation/body). Limits: 0.02 Hz, and 1 % of Q and decay time,
 * well inside what the project promises (0.1 Hz, 2 %); more than six times the Cramér-Rao bound of these scenes,
 * which is asserted too, so that a miss is a fault and not bad luck.
 */
class DampedBodyRecoveryReferenceTest {

    /** ρ·A/(4πr·m) of the body at 1 m, Pa/N: what follows the force at once. */
    private static final double PLATEAU = 1.2 * 0.040 / (4 * Math.PI * 0.080);

    private static final List<PublishedRow> TRUTH =
            PublishedTable.rows("body/damped-poles.csv").toList();

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void bothPolesComeBack(long seed) {
        SyntheticTaps taps = TapScene.of(TRUTH.stream()
                        .map(DampedBodyRecoveryReferenceTest::mode)
                        .toList())
                .direct(PLATEAU)
                .strikes(8, 1.3)
                .whiteNoise(NoiseLevel.BODY_BAND, 45)
                .seed(seed)
                .build();
        List<CramerRao.Bound> bounds = CramerRao.of(taps, 0.5);
        TapTrack track = TapTrack.read(taps.recording().stream(), TapSettings.STANDARD);
        TapResult result = TapAnalysis.analyse(List.of(track), TapSettings.STANDARD, HoleState.OPEN);

        assertThat(result.strikes()).hasSize(8);
        assertThat(result.resonances()).hasSize(2);
        for (int m = 0; m < 2; m++) {
            Resonance found = result.resonances().get(m).resonance();
            PublishedRow truth = TRUTH.get(m);
            CramerRao.Bound bound = bounds.get(m);
            System.out.printf(
                    Locale.ROOT,
                    "%s pole: %+.4f Hz (bound %.4f), Q %+.2f %% (bound %.2f %%)%n",
                    truth,
                    found.frequencyHz().value() - truth.number("frequency_hz"),
                    bound.frequencyHz(),
                    100 * (found.q().value() / truth.number("q") - 1),
                    100 * bound.q() / truth.number("q"));
            assertThat(6 * bound.frequencyHz()).isLessThan(0.02);
            assertThat(6 * bound.q() / truth.number("q")).isLessThan(0.01);
            assertThat(found.frequencyHz().value()).isCloseTo(truth.number("frequency_hz"), within(0.02));
            assertThat(found.q().value()).isCloseTo(truth.number("q"), Percentage.withPercentage(1));
            assertThat(found.decayTimeSeconds().value())
                    .isCloseTo(truth.number("decay_time_s"), Percentage.withPercentage(1));
        }
    }

    /** After a blow of 1 N·s at time 0 a pole's share is 2·Re(residue·exp(s·t)). */
    private static TrueMode mode(PublishedRow row) {
        double real = row.number("residue_real_pa_per_ns");
        double imaginary = row.number("residue_imaginary_pa_per_ns");
        return new TrueMode(
                row.number("frequency_hz"),
                row.number("q"),
                2 * Math.hypot(real, imaginary),
                Math.atan2(imaginary, real));
    }
}
