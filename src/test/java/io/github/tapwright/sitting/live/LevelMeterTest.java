package io.github.tapwright.sitting.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LevelMeterTest {

    private final LevelMeter meter = new LevelMeter(LiveFormat.STANDARD);

    @Test
    void aSineOfHalfScaleHasItsPeakAndRms() {
        meter.feed(sine(0.5, 48_000));

        LevelNow now = meter.now();

        // 20·log10(0.5) and 3.01 dB less.
        assertThat(now.peakDbfs().orElseThrow()).isCloseTo(-6.02, within(0.01));
        assertThat(now.rmsDbfs().orElseThrow()).isCloseTo(-9.03, within(0.01));
        assertThat(now.clipped()).isFalse();
    }

    @Test
    void clippingIsToldForTwoSecondsAndThenForgotten() {
        double[][] flat = sine(2, 4800);
        for (int n = 0; n < flat[0].length; n++) {
            flat[0][n] = Math.max(-1, Math.min(1, flat[0][n]));
        }
        meter.feed(flat);
        assertThat(meter.now().clipped()).isTrue();
        assertThat(meter.now().hints()).anyMatch(h -> h.contains("turn the gain down"));

        meter.feed(sine(0.1, 3 * 48_000));

        assertThat(meter.now().clipped()).isFalse();
    }

    @Test
    void theNoiseFloorIsThatOfTheQuietMoments() {
        for (int i = 0; i < 5; i++) {
            meter.feed(sine(0.001, 48_000));
            meter.feed(sine(0.3, 9_600));
        }

        assertThat(meter.now().noiseFloorDbfs().orElseThrow()).isCloseTo(-63, within(0.3));
    }

    @Test
    void aNoisyRoomIsToldWithATrueMinus() {
        for (int i = 0; i < 5; i++) {
            meter.feed(sine(0.03, 48_000));
        }

        // 20·log10(0.03) and 3.01 dB less.
        assertThat(meter.now().hints())
                .anyMatch(h -> h.startsWith("the quiet moments lie at −33 dBFS: silence the room"));
    }

    @Test
    void aDeadInputIsNoSilence() {
        meter.feed(new double[1][96_000]);

        assertThat(meter.now().peakDbfs()).isEmpty();
        assertThat(meter.now().hints()).anyMatch(h -> h.contains("nothing but zeros"));
    }

    private static double[][] sine(double amplitude, int length) {
        double[][] x = new double[1][length];
        for (int n = 0; n < length; n++) {
            x[0][n] = amplitude * Math.sin(2 * Math.PI * 1000 * n / 48_000.0 + 0.1);
        }
        return x;
    }
}
