package io.github.tapwright.sitting.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import org.junit.jupiter.api.Test;

class PlayBackTest {

    @Test
    void aLoudTapBeginsSoftlyAndAQuietOneIsNotMadeLouder() {
        // Half of full scale is −6.02 dB, so 13.98 dB are taken off to reach −20 dB.
        assertThat(PlayBack.firstGainDb(sound(0.5))).isCloseTo(-13.98, within(0.01));
        assertThat(PlayBack.firstGainDb(sound(0.01))).isZero();
        assertThat(PlayBack.firstGainDb(sound(0))).isZero();
    }

    private static Recording sound(double peak) {
        return Recording.of(new SampleRate(48_000), new double[] {0, peak, -peak / 2}, new double[3]);
    }
}
