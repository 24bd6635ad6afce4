package io.github.tapwright.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.recording.SampleRate;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class SoundLevelMeterTest {

    private static final SampleRate RATE = new SampleRate(44_100);

    @Test
    void silenceHasNoLevel() {
        SoundLevelMeter meter = new SoundLevelMeter(RATE);
        assertThat(meter.levels(new FullScale())).isEmpty();
        meter.take(new double[44_100], 44_100);
        assertThat(meter.levels(new FullScale())).isEmpty();
        assertThatThrownBy(() -> new FullScale().levelOf(0)).hasMessageContaining("silence");
        assertThatThrownBy(() -> new Level(Double.NaN, new FullScale())).hasMessageContaining("finite");
    }

    @Test
    void blocksOfAnySizeGiveTheSameLevels() {
        double[] sound = Sound.of(44_100, 1, t -> Math.exp(-5 * t) * Math.sin(1300 * t));
        SoundLevels whole = levels(sound, sound.length);
        SoundLevels pieces = levels(sound, 900);
        assertThat(pieces.laeq().levelDb()).isCloseTo(whole.laeq().levelDb(), within(1e-12));
        assertThat(pieces.lceq().levelDb()).isCloseTo(whole.lceq().levelDb(), within(1e-12));
        assertThat(pieces.lzeq().levelDb()).isCloseTo(whole.lzeq().levelDb(), within(1e-12));
        assertThat(pieces.lafMax()).isEqualTo(whole.lafMax());
        assertThat(pieces.lasMax()).isEqualTo(whole.lasMax());
        assertThat(pieces.lcPeak()).isEqualTo(whole.lcPeak());
    }

    /** The offset sets in with the recording, as a click; after that it is gone. */
    @Test
    void aConstantOffsetIsNoSound() {
        double lzeq = levels(Sound.of(44_100, 20, t -> 0.3), 4096).lzeq().levelDb();
        assertThat(lzeq).isLessThan(20 * Math.log10(0.3) - 25);
    }

    private static SoundLevels levels(double[] sound, int block) {
        SoundLevelMeter meter = new SoundLevelMeter(RATE);
        for (int start = 0; start < sound.length; start += block) {
            int count = Math.min(block, sound.length - start);
            meter.take(Arrays.copyOfRange(sound, start, start + count), count);
        }
        return meter.levels(new FullScale()).orElseThrow();
    }
}
