package io.github.tapwright.level.loudness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.level.Sound;
import io.github.tapwright.recording.SampleRate;
import org.junit.jupiter.api.Test;

class LoudnessMeterTest {

    /** Definition of the sone: 1 kHz at 40 dB is 1 sone; the method itself gives a few per cent less or more. */
    @Test
    void oneSone() {
        HeardLoudness heard = Heard.free(48_000, Sound.sine(48_000, 3, 1000, -60));
        assertThat(heard.maximumSone()).isCloseTo(1, within(0.1));
        assertThat(heard.exceededFivePercentPhon()).isCloseTo(40, within(1.0));
    }

    @Test
    void tenDecibelsMoreAreTwiceAsLoud() {
        double soft = Heard.free(48_000, Sound.sine(48_000, 2, 1000, -40)).exceededFivePercentSone();
        double loud = Heard.free(48_000, Sound.sine(48_000, 2, 1000, -30)).exceededFivePercentSone();
        assertThat(loud / soft).isCloseTo(2, within(0.05));
    }

    /** A decay leaves loudness behind: after a long tone it lingers longer than after a short one. */
    @Test
    void loudnessLingersAfterALongTone() {
        double afterLong = Heard.free(48_000, Sound.joined(Sound.sine(48_000, 1, 1000, -30), new double[4800]))
                .exceededFivePercentSone();
        double afterShort = Heard.free(48_000, Sound.joined(Sound.sine(48_000, 0.02, 1000, -30), new double[4800]))
                .exceededFivePercentSone();
        assertThat(afterLong).isGreaterThan(afterShort);
    }

    @Test
    void anEmptyRecordingIsRefused() {
        assertThat(Heard.result(44_100, 100, new double[0]))
                .isInstanceOfSatisfying(
                        NoLoudness.class, no -> assertThat(no.reason()).contains("empty"));
    }

    @Test
    void silenceIsNotLoud() {
        assertThat(Heard.free(44_100, new double[44_100]).maximumSone()).isZero();
    }

    @Test
    void levelsNoEarStandsAreRefused() {
        assertThat(Heard.result(48_000, 140, Sound.sine(48_000, 1, 100, 0)))
                .isInstanceOfSatisfying(
                        NoLoudness.class, no -> assertThat(no.reason()).contains("120 dB"));
    }

    @Test
    void ratesWithoutTheTopBandsAreRefused() {
        assertThat(LoudnessMeter.accepts(new SampleRate(32_000))).isFalse();
        assertThat(LoudnessMeter.accepts(new SampleRate(44_100.5))).isFalse();
        assertThat(LoudnessMeter.accepts(new SampleRate(44_100))).isTrue();
        assertThatThrownBy(() -> new LoudnessMeter(new SampleRate(22_050), 100, SoundField.FREE))
                .hasMessageContaining("36000");
    }
}
