package io.github.tapwright.mode;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.synthesis.NoiseLevel;
import io.github.tapwright.synthesis.SyntheticTaps;
import io.github.tapwright.synthesis.TapScene;
import io.github.tapwright.synthesis.TrueMode;
import io.github.tapwright.tap.TapSettings;
import io.github.tapwright.tap.TapTrack;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * Recovery of modes whose truth is known because we made them (exact closed form, see synthesis).
 *
 * <p>The limits are the project's own promises: 0.1 Hz and 2 % of Q.
 */
class KnownTruthReferenceTest {

    static final double[] FREQUENCIES = {98, 125, 188, 205, 232, 270, 330, 395, 480, 560, 700, 870};
    static final double[] QS = {24, 28, 32, 30, 36, 26, 40, 34, 44, 38, 48, 42};
    static final double[] AMPLITUDES = {1, 0.3, 1.2, 0.9, 0.7, 0.4, 0.5, 0.6, 0.3, 0.4, 0.35, 0.3};

    static List<TrueMode> twelve() {
        List<TrueMode> modes = new ArrayList<>();
        for (int i = 0; i < FREQUENCIES.length; i++) {
            modes.add(TrueMode.resonator(FREQUENCIES[i], QS[i], AMPLITUDES[i]));
        }
        return modes;
    }

    static TapResult analyse(SyntheticTaps taps) {
        TapTrack track = TapTrack.read(taps.recording().stream(), TapSettings.STANDARD);
        return TapAnalysis.analyse(List.of(track), TapSettings.STANDARD, HoleState.UNKNOWN);
    }

    static Resonance nearest(TapResult result, double hertz) {
        return result.resonances().stream()
                .map(NamedResonance::resonance)
                .min((a, b) -> Double.compare(
                        Math.abs(a.frequencyHz().value() - hertz),
                        Math.abs(b.frequencyHz().value() - hertz)))
                .orElseThrow();
    }

    private static void assertRecovered(SyntheticTaps taps, double upToHz, double withinHz, double withinQ) {
        TapResult result = analyse(taps);
        for (TrueMode mode : taps.modes()) {
            if (mode.frequencyHz() <= upToHz) {
                Resonance found = nearest(result, mode.frequencyHz());
                String what = String.format(Locale.ROOT, "mode at %.1f Hz: %s", mode.frequencyHz(), found);
                assertThat(found.frequencyHz().value())
                        .as(what)
                        .isCloseTo(mode.frequencyHz(), org.assertj.core.data.Offset.offset(withinHz));
                assertThat(found.q().value() / mode.q())
                        .as(what)
                        .isCloseTo(1, org.assertj.core.data.Offset.offset(withinQ));
            }
        }
    }

    @Test
    void twelveModesInAQuietRoom() {
        assertRecovered(
                TapScene.of(twelve())
                        .strikes(6, 1.3)
                        .whiteNoise(NoiseLevel.FULL_BAND, 45)
                        .seed(11)
                        .build(),
                500,
                0.1,
                0.02);
    }

    @Test
    void twelveModesReportNothingElse() {
        TapResult result =
                analyse(TapScene.of(twelve()).strikes(6, 1.3).seed(12).build());
        assertThat(result.resonances()).hasSizeBetween(11, 12); // 870 Hz is near a zero of the contact
        for (NamedResonance found : result.resonances()) {
            double hertz = found.resonance().frequencyHz().value();
            assertThat(Arrays.stream(FREQUENCIES).anyMatch(f -> Math.abs(f - hertz) < 0.002 * f))
                    .isTrue();
        }
    }

    @Test
    void closePair() {
        assertRecovered(
                TapScene.of(TrueMode.resonator(200, 30, 1), TrueMode.resonator(206.5, 30, 0.8))
                        .strikes(6, 1.3)
                        .scatter(3, 0.3)
                        .whiteNoise(NoiseLevel.FULL_BAND, 50)
                        .seed(13)
                        .build(),
                1000,
                0.1,
                0.02);
    }

    @Test
    void noisyRoomStillGivesTheLowModes() {
        assertRecovered(
                TapScene.of(twelve())
                        .strikes(10, 1.3)
                        .whiteNoise(NoiseLevel.FULL_BAND, 22)
                        .seed(14)
                        .build(),
                250,
                0.15,
                0.02);
    }
}
