package io.github.tapwright.synthesis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.tap.RejectionReason;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class TapSceneTest {

    private static TapScene scene() {
        return TapScene.of(TrueMode.resonator(104, 25, 1), TrueMode.resonator(201, 28, 2));
    }

    private static double[] samples(SyntheticTaps taps) {
        return taps.recording().channel(0);
    }

    @Test
    void isTheSameForTheSameSeedOnly() {
        assertThat(samples(scene().seed(5).build()))
                .isEqualTo(samples(scene().seed(5).build()))
                .isNotEqualTo(samples(scene().seed(6).build()));
    }

    @Test
    void soundsTheSameAtEveryRate() {
        double[] high = samples(scene().silent().rate(96_000).build());
        double[] low = samples(scene().silent().rate(48_000).build());
        double worst = 0;
        double scale = Levels.peak(high) / Levels.peak(low);
        for (int n = 0; n < low.length; n++) {
            worst = Math.max(worst, Math.abs(low[n] * scale - high[2 * n]));
        }
        // the peak sample itself is found on two grids, hence the common factor near 1
        assertThat(scale).isCloseTo(1, within(1e-3));
        assertThat(worst).isLessThan(1e-3);
    }

    @Test
    void ringsFreelyAfterTheContactAsTheTruthSays() {
        SyntheticTaps taps = scene().silent().strikes(1, 1).build();
        TrueStrike strike = taps.strikes().get(0);
        double end = strike.onsetSeconds() + strike.contact().durationSeconds();
        double[] y = samples(taps);
        for (int n = (int) Math.ceil(end * 48_000); n < y.length; n += 997) {
            double t = n / 48_000.0 - end;
            double expected = 0;
            for (int m = 0; m < 2; m++) {
                expected += taps.amplitudeAfterContact(strike, m)
                        .multiply(taps.modes().get(m).pole().multiply(t).exp())
                        .getReal();
            }
            assertThat(y[n]).isCloseTo(expected, within(1e-9));
        }
    }

    @Test
    void keepsTheSignalToNoiseRatioAsDefined() {
        SyntheticTaps taps = scene().whiteNoise(NoiseLevel.BODY_BAND, 26)
                .strikes(5, 1.5)
                .scatter(0, 0)
                .build();
        double[] y = samples(taps);
        TrueStrike strike = taps.strikes().get(2);
        int from = (int) Math.ceil((strike.onsetSeconds() + 0.0015) * 48_000);
        double signal = Levels.bandRms(Arrays.copyOfRange(y, from, from + 4800), 48_000, 60, 1000);
        double noise = Levels.bandRms(Arrays.copyOf(y, 33_600), 48_000, 60, 1000);
        // 7 blocks of 95 bins behind the noise: about 4 %, 0.35 dB
        assertThat(Levels.db(signal / noise)).isCloseTo(26, within(1.0));
    }

    @Test
    void reachesItsPeak() {
        assertThat(Levels.db(Levels.peak(samples(scene().silent().peak(-9).build()))))
                .isCloseTo(-9, within(0.3));
    }

    @Test
    void plantsWhatItSays() {
        SyntheticTaps taps = scene().strikes(7, 1.3)
                .fault(1, PlantedFault.CLIPPED)
                .doubleStrike(2, 0.04)
                .fault(3, PlantedFault.NEXT_TOO_EARLY)
                .fault(5, PlantedFault.TOO_QUIET)
                .fault(6, PlantedFault.RECORDING_ENDS)
                .build();
        double[] y = samples(taps);
        assertThat(Arrays.stream(y).filter(v -> Math.abs(v) == 1).count()).isGreaterThan(5);
        assertThat(taps.strikes().get(2).secondOnsetSeconds().orElseThrow()
                        - taps.strikes().get(2).onsetSeconds())
                .isCloseTo(0.04, within(1e-12));
        assertThat(taps.strikes().get(4).onsetSeconds() - taps.strikes().get(3).onsetSeconds())
                .isBetween(0.2, 0.22);
        assertThat(taps.recording().length() / 48_000.0 - taps.strikes().get(6).onsetSeconds())
                .isCloseTo(0.12, within(1e-4));
        assertThat(taps.goodStrikes()).hasSize(2);
        assertThat(taps.strikes().get(5).fault().orElseThrow().reason()).isEqualTo(RejectionReason.TOO_QUIET);
    }

    @Test
    void refusesFaultsThatCannotBe() {
        assertThatThrownBy(() -> scene().fault(2, PlantedFault.RECORDING_ENDS)).hasMessageContaining("last strike");
        assertThatThrownBy(() -> scene().fault(6, PlantedFault.NEXT_TOO_EARLY)).hasMessageContaining("last strike");
    }

    @Test
    void talksWithoutSuddenAttacks() {
        double[] y =
                samples(scene().strikes(1, 1).firstAt(3).silent().speech(-20).build());
        double before = Levels.peak(Arrays.copyOf(y, 140_000));
        assertThat(Levels.db(before)).isBetween(-40.0, -19.9);
    }
}
