package io.github.tapwright.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.level.broadcast.LoudnessMatch;
import io.github.tapwright.level.broadcast.MatchedBy;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LoudnessMatchTest {

    private static final double RATE_HZ = 48_000;

    /** A pluck that falls by 60 dB in a time. */
    private static Recording pluck(double hz, double amplitude, double decaySeconds) {
        double[] samples = new double[(int) (2 * RATE_HZ)];
        for (int n = 0; n < samples.length; n++) {
            double t = n / RATE_HZ;
            samples[n] = amplitude * Math.pow(10, -3 * t / decaySeconds) * Math.sin(2 * Math.PI * hz * t);
        }
        return Recording.of(new SampleRate(RATE_HZ), samples);
    }

    private static Recording turned(Recording sound, double gainDb) {
        double[] samples = sound.channel(0);
        for (int n = 0; n < samples.length; n++) {
            samples[n] *= Math.pow(10, gainDb / 20);
        }
        return Recording.of(sound.sampleRate(), samples);
    }

    @ParameterizedTest
    @EnumSource(MatchedBy.class)
    void afterwardsAllAreAsLoudAsTheFaintestAndNoneWasTurnedUp(MatchedBy by) {
        List<Recording> sounds = List.of(pluck(110, 0.5, 3), pluck(440, 0.2, 1.5), pluck(1000, 0.05, 2));

        LoudnessMatch match = LoudnessMatch.of(sounds, by).orElseThrow();

        assertThat(match.gainsDb()).allMatch(g -> g <= 0).contains(0.0);
        double faintest =
                match.loudnessLufs().stream().mapToDouble(l -> l).min().orElseThrow();
        for (int i = 0; i < sounds.size(); i++) {
            Recording played = turned(sounds.get(i), match.gainsDb().get(i));
            // a gate can only move where the sound comes near to it; 0.01 LU is far below what is heard
            assertThat(LoudnessMatch.lufs(played, by).orElseThrow()).isCloseTo(faintest, within(0.01));
        }
    }

    @Test
    void soundsBeyondFullScaleAreAllTurnedDownAlike() {
        List<Recording> sounds = List.of(pluck(1000, 1.6, 2), pluck(1000, 1.6, 2));

        LoudnessMatch match =
                LoudnessMatch.of(sounds, MatchedBy.MOMENTARY_MAXIMUM).orElseThrow();

        // 20·log10(1.6) = 4.08 dB; the first crest of the decaying sine lies 0.01 dB below
        assertThat(match.gainsDb().get(0)).isCloseTo(-4.08, within(0.02));
        assertThat(match.gainsDb().get(1)).isEqualTo(match.gainsDb().get(0));
    }

    @Test
    void silenceAndMomentsCannotBeMatched() {
        Recording silence = Recording.of(new SampleRate(RATE_HZ), new double[48_000]);
        Recording moment = Recording.of(new SampleRate(RATE_HZ), new double[1000]);

        assertThat(LoudnessMatch.of(List.of(silence, pluck(440, 0.1, 1)), MatchedBy.INTEGRATED))
                .isEmpty();
        assertThat(LoudnessMatch.of(List.of(moment, pluck(440, 0.1, 1)), MatchedBy.MOMENTARY_MAXIMUM))
                .isEmpty();
    }
}
