package io.github.tapwright.note;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.StringNote;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Decay of the whole note. For p² = exp(−13.8155·t/T) EDT, T20 and T30 are all T: exact, from their definition in
 * [ISO3382-1].
 */
class WholeDecayTest {

    private static WholeDecay decay(StringNote string, long seed) {
        return NoteAnalysis.analyse(string.recording(22_050, Chance.seeded(seed)).stream(), NoteSettings.STANDARD)
                .decay();
    }

    @ParameterizedTest
    @CsvSource({"0.55, 0.9, 60", "0.55, 0.55, 60", "0.55, 1.5, 50", "3, 2.5, 60", "8, 6, 60"})
    void allThreeTimesAreRightToThreePerCent(double seconds, double recorded, double snrDb) {
        StringNote string = StringNote.plain(196, 5e-5, seconds, recorded).inNoise(snrDb, 0.2);
        WholeDecay decay = decay(string, 17);
        for (Finding<DecayTime> time : List.of(decay.early(), decay.t20(), decay.t30())) {
            assertThat(time.found().orElseThrow().seconds().value()).isCloseTo(seconds, Percentage.withPercentage(3));
        }
        assertThat(decay.decayTime().found().orElseThrow().range()).isEqualTo(DecayRange.T30);
    }

    @Test
    void withoutALeadInTheNoiseIsTakenFromTheEnd() {
        StringNote string = StringNote.plain(196, 5e-5, 0.55, 1.2).inNoise(50, 0);
        assertThat(decay(string, 2).t30().found().orElseThrow().seconds().value())
                .isCloseTo(0.55, Percentage.withPercentage(3));
    }

    @Test
    void aShortRecordingIsRefusedWithWhatItHolds() {
        // 1.2 s of 60 dB in 3 s are 24 dB
        WholeDecay decay = decay(StringNote.plain(196, 5e-5, 3, 1.2), 3);
        assertThat(decay.t30().refusal().orElseThrow())
                .startsWith("too short: only 2")
                .contains("T30 needs 35 dB");
        assertThat(decay.heardDb()).isBetween(18.0, 24.0);
        assertThat(decay.early().found().orElseThrow().seconds().value()).isCloseTo(3, Percentage.withPercentage(3));
    }

    @Test
    void aNoisyRecordingIsRefusedForItsNoise() {
        WholeDecay decay = decay(StringNote.plain(196, 5e-5, 1, 2).inNoise(32, 0.3), 3);
        assertThat(decay.t30().refusal().orElseThrow()).startsWith("too noisy");
        assertThat(decay.early().found()).isPresent();
    }
}
