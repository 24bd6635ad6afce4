package io.github.tapwright.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import org.junit.jupiter.api.Test;

class PlayedSamplesTest {

    private static final Recording SOUND = Recording.of(new SampleRate(48_000), new double[] {0, 0.5, -1, 1, 1.5});

    @Test
    void samplesBecomeLittleEndianWholeNumbersAndStopAtFullScale() {
        byte[] frames = new PlayedSamples(SOUND, 0).frames(0, 5, 16);

        assertThat(frames).containsExactly(0, 0, 0x00, 0x40, 0x00, 0x80, 0xFF, 0x7F, 0xFF, 0x7F);
        assertThat(new PlayedSamples(SOUND, 0).frames(1, 1, 24)).containsExactly(0x00, 0x00, 0x40);
    }

    @Test
    void aGainTurnsDownAndNeverUp() {
        // 20·log10(0.1) = −20 dB: 1.0 becomes 0.1 of 2¹⁵, 3277 = 0x0CCD
        assertThat(new PlayedSamples(SOUND, -20).frames(3, 1, 16)).containsExactly(0xCD, 0x0C);
        assertThatIllegalArgumentException().isThrownBy(() -> new PlayedSamples(SOUND, 1));
    }
}
