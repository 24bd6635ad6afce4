package io.github.tapwright.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class PlayedSamplesTest {

    /** Long enough for the fade at its end, 960 samples, to lie behind the first five. */
    private static final Recording SOUND =
            Recording.of(new SampleRate(48_000), Arrays.copyOf(new double[] {0, 0.5, -1, 1, 1.5}, 1500));

    @Test
    void samplesBecomeLittleEndianWholeNumbersAndStopAtFullScale() {
        byte[] frames = new PlayedSamples(SOUND, 0).frames(0, 5, 16);

        assertThat(frames).containsExactly(0, 0, 0x00, 0x40, 0x00, 0x80, 0xFF, 0x7F, 0xFF, 0x7F);
        assertThat(new PlayedSamples(SOUND, 0).frames(1, 1, 24)).containsExactly(0x00, 0x00, 0x40);
    }

    @Test
    void theEndLeadsToSilenceWithoutAStep() {
        double[] steady = new double[1500];
        Arrays.fill(steady, 0.5);
        byte[] last = new PlayedSamples(Recording.of(new SampleRate(48_000), steady), 0).frames(0, 1500, 16);

        assertThat(value(last, 539)).as("before the fade of 20 ms").isEqualTo(16_384);
        assertThat(value(last, 1019)).as("half way, 480 of 960 samples before the end").isEqualTo(8_192);
        assertThat(value(last, 1499)).isZero();
    }

    private static int value(byte[] frames, int n) {
        return (frames[2 * n + 1] << 8) | (frames[2 * n] & 0xFF);
    }

    @Test
    void aGainTurnsDownAndNeverUp() {
        // 20·log10(0.1) = −20 dB: 1.0 becomes 0.1 of 2¹⁵, 3277 = 0x0CCD
        assertThat(new PlayedSamples(SOUND, -20).frames(3, 1, 16)).containsExactly(0xCD, 0x0C);
        assertThatIllegalArgumentException().isThrownBy(() -> new PlayedSamples(SOUND, 1));
    }
}
