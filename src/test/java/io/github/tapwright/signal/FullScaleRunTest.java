package io.github.tapwright.signal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FullScaleRunTest {

    private static final double TOP_OF_16_BITS = 32_767 / 32_768.0;

    @Test
    void threeSamplesInARowAtFullScaleAreClipped() {
        assertThat(clipped(0.5, 1, 1, 1, 0.5)).isEqualTo(3);
        assertThat(clipped(-1, -1, -1, -1, 0, TOP_OF_16_BITS, TOP_OF_16_BITS, TOP_OF_16_BITS))
                .isEqualTo(7);
    }

    @Test
    void peaksThatJustFitAreNot() {
        assertThat(clipped(1, 0, 1, 0, 1, 0, 1)).isZero();
        assertThat(clipped(1, 1, 0.9, 1, 1)).isZero();
    }

    @Test
    void theTopOfALowSineThatJustFitsIsNot() {
        double[] sine = new double[48_000];
        for (int n = 0; n < sine.length; n++) {
            sine[n] = Math.sin(2 * Math.PI * 82.4 * n / 48_000);
        }
        assertThat(clipped(sine)).isZero();
    }

    @Test
    void theWarningNamesTheRemedyAndIsSaidOnlyWhereItHolds() {
        assertThat(FullScaleRun.warning(12, "levels are too low"))
                .contains("clipped: 12 samples at full scale; levels are too low; turn the gain down and record again");
        assertThat(FullScaleRun.warning(0, "levels are too low")).isEmpty();
    }

    private static long clipped(double... samples) {
        FullScaleRun run = new FullScaleRun();
        for (double sample : samples) {
            run.take(sample);
        }
        return run.clippedSamples();
    }
}
