package io.github.tapwright.tap;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.synthesis.PlantedFault;
import io.github.tapwright.synthesis.SyntheticTaps;
import io.github.tapwright.synthesis.TapScene;
import io.github.tapwright.synthesis.TrueMode;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A decay that ends too early is told by what it lacks. */
class CutOffTest {

    private static Rejection last(TrueMode mode, double secondsKept) {
        SyntheticTaps taps = TapScene.of(mode).strikes(4, 1.1).build();
        double onset = taps.strikes().get(3).onsetSeconds();
        double[] samples = taps.recording().channel(0);
        double[] kept = Arrays.copyOf(samples, (int) ((onset + secondsKept) * 48_000));
        TapTrack track = TapTrack.read(Recording.of(new SampleRate(48_000), kept).stream(), TapSettings.STANDARD);
        List<Strike> strikes =
                StrikeSet.find(List.of(track), TapSettings.STANDARD).strikes();
        return strikes.get(3).rejections().get(0);
    }

    @Test
    void aDecayThatHasNotFallenFarEnoughLacksDecibels() {
        Rejection rejection = last(TrueMode.resonator(190, 60, 1), 0.17);
        assertThat(rejection.reason()).isEqualTo(PlantedFault.RECORDING_ENDS.reason());
        assertThat(rejection.text()).contains("dB only, 20 dB needed");
    }

    @Test
    void aDecayThatHasFallenButIsShortLacksTime() {
        Rejection rejection = last(TrueMode.resonator(300, 8, 1), 0.08);
        assertThat(rejection.reason()).isEqualTo(PlantedFault.RECORDING_ENDS.reason());
        assertThat(rejection.text()).contains("s only, 0.08 s needed").doesNotContain("dB");
    }
}
