package io.github.tapwright.synthesis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class LevelsTest {

    @Test
    void seesAToneOnlyInItsBand() {
        double[] tone = new double[9600];
        for (int n = 0; n < tone.length; n++) {
            tone[n] = Math.sin(2 * Math.PI * 250 * n / 48_000);
        }
        assertThat(Levels.bandRms(tone, 48_000, 60, 1000)).isCloseTo(Math.sqrt(0.5), within(1e-9));
        assertThat(Levels.bandRms(tone, 48_000, 300, 1000)).isLessThan(1e-9);
    }

    @Test
    void seesOfWhiteNoiseTheBandsShare() {
        double[] noise = RoomNoise.white(new Random(3), 480_000);
        // 95 bins of 10 Hz out of 2,400 carry 95/2400 of the power; 100 blocks leave about 1 % of scatter
        assertThat(Levels.bandRms(noise, 48_000, 60, 1000)).isCloseTo(Math.sqrt(95.0 / 2400), within(0.005));
    }
}
