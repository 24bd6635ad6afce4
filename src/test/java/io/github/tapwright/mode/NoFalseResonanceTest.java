package io.github.tapwright.mode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.recording.UnreadableRecordingException;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.TapScene;
import io.github.tapwright.synthesis.TrueMode;
import io.github.tapwright.tap.TapSettings;
import io.github.tapwright.tap.TapTrack;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rooms without taps give no strikes, and hum never becomes a resonance. */
class NoFalseResonanceTest {

    private static TapResult analyse(Recording recording) {
        TapTrack track = TapTrack.read(recording.stream(), TapSettings.STANDARD);
        return TapAnalysis.analyse(List.of(track), TapSettings.STANDARD, HoleState.OPEN);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void aRoomAloneGivesNoStrikes(int seed) {
        RandomGenerator chance = Chance.seeded(seed);
        double[] room = new double[20 * 48_000];
        double slow = 0;
        for (int n = 0; n < room.length; n++) {
            double white = chance.nextGaussian();
            slow = 0.99 * slow + 0.1 * white;
            double hum = seed % 2 == 0 ? 0.05 * Math.sin(2 * Math.PI * 50 * n / 48_000.0) : 0;
            room[n] = 0.003 * white + 0.01 * slow + hum;
        }
        TapResult result = analyse(Recording.of(new SampleRate(48_000), room));
        assertThat(result.strikes()).isEmpty();
        assertThat(result.resonances()).isEmpty();
    }

    @Test
    void silenceGivesNoStrikes() {
        assertThat(analyse(Recording.of(new SampleRate(44_100), new double[44_100 * 3]))
                        .strikes())
                .isEmpty();
    }

    @Test
    void differentSampleRatesAreNoSet() {
        List<TapTrack> tracks = List.of(
                TapTrack.read(Recording.of(new SampleRate(44_100), new double[44_100]).stream(), TapSettings.STANDARD),
                TapTrack.read(Recording.of(new SampleRate(48_000), new double[48_000]).stream(), TapSettings.STANDARD));
        assertThatThrownBy(() -> TapAnalysis.analyse(tracks, TapSettings.STANDARD, HoleState.OPEN))
                .isInstanceOf(UnreadableRecordingException.class)
                .hasMessageContaining("different sample rates");
    }

    @ParameterizedTest
    @ValueSource(doubles = {50, 60})
    void humIsNeverAResonance(double mainsHz) {
        TapResult result = analyse(TapScene.of(TrueMode.resonator(112, 22, 0.6), TrueMode.resonator(212, 30, 1))
                .strikes(6, 1.3)
                .hum(mainsHz, -30)
                .seed(5)
                .build()
                .recording());
        assertThat(result.resonances()).isNotEmpty();
        for (NamedResonance r : result.resonances()) {
            double hertz = r.resonance().frequencyHz().value();
            assertThat(Math.min(Math.abs(hertz - 112), Math.abs(hertz - 212)))
                    .as("resonance at %.2f Hz", hertz)
                    .isLessThan(0.5);
        }
    }
}
