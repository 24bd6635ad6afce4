package io.github.tapwright.level.broadcast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.level.Sound;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProgrammeLoudnessTest {

    @Test
    void aShortSoundHasOnlyWhatFitsIntoIt() {
        ProgrammeLoudness tooShort = Programme.measured(48_000, List.of(1.0), Sound.sine(48_000, 0.3, 1000, -20));
        assertThat(tooShort.integratedLufs()).isEmpty();
        assertThat(tooShort.momentaryMaxLufs()).isEmpty();
        assertThat(tooShort.truePeakDb().orElseThrow()).isCloseTo(-20, within(0.5));
        ProgrammeLoudness second = Programme.measured(48_000, List.of(1.0), Sound.sine(48_000, 1, 1000, -20));
        assertThat(second.momentaryMaxLufs()).isPresent();
        assertThat(second.shortTermMaxLufs()).isEmpty();
        assertThat(second.loudnessRangeLu()).isEmpty();
    }

    @Test
    void silenceHasNoLoudness() {
        ProgrammeLoudness silence = Programme.measured(48_000, List.of(1.0), new double[480_000]);
        assertThat(silence.integratedLufs()).isEmpty();
        assertThat(silence.momentaryMaxLufs()).isEmpty();
        assertThat(silence.loudnessRangeLu()).isEmpty();
        assertThat(silence.truePeakDb()).isEmpty();
    }

    @Test
    void belowTheGateThereIsNoIntegratedLoudness() {
        ProgrammeLoudness faint = Programme.measured(48_000, List.of(1.0), Sound.sine(48_000, 5, 1000, -75));
        assertThat(faint.integratedLufs()).isEmpty();
        assertThat(faint.momentaryMaxLufs().orElseThrow()).isCloseTo(-78, within(0.1));
    }

    /** At 11,025 Hz a step of 10 ms is 110.25 samples; steps must not drift. The bilinear shelf is 0.11 dB off there. */
    @Test
    void stepsOfUnevenLengthDoNotDrift() {
        ProgrammeLoudness loudness = Programme.measured(11_025, List.of(1.0), Sound.sine(11_025, 10, 1000, -20));
        assertThat(loudness.integratedLufs().orElseThrow()).isCloseTo(-23, within(0.15));
    }

    @Test
    void layoutsThatTheCountDoesNotTellAreUnknown() {
        assertThat(ChannelWeights.ofUsualLayout(1)).isPresent();
        assertThat(ChannelWeights.ofUsualLayout(2)).isPresent();
        assertThat(ChannelWeights.ofUsualLayout(3)).isEmpty();
        assertThatThrownBy(() -> new ChannelWeights(List.of())).hasMessageContaining("weight");
        assertThatThrownBy(() -> new ChannelWeights(List.of(-1.0))).hasMessageContaining("weight");
    }
}
