package io.github.tapwright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WindowTest {

    @Test
    void aPeriodicHannOfFour() {
        assertThat(Window.HANN.periodic(4)).containsExactly(new double[] {0, 0.5, 1, 0.5}, within(1e-15));
    }

    @Test
    void aPeriodicTriangleOfFour() {
        assertThat(Window.TRIANGLE.periodic(4)).containsExactly(new double[] {0, 0.5, 1, 0.5}, within(1e-15));
    }

    @ParameterizedTest
    @EnumSource
    void risesAsItFalls(Window window) {
        double[] periodic = window.periodic(100);
        assertThat(periodic).hasSize(100);
        for (int n = 1; n < 100; n++) {
            assertThat(periodic[100 - n]).isCloseTo(periodic[n], within(1e-14));
        }
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "FLAT_TOP")
    void isHighestInTheMiddle(Window window) {
        assertThat(window.at(0.5)).isCloseTo(1, within(1e-4));
        assertThat(window.at(0.2)).isLessThanOrEqualTo(window.at(0.4));
    }

    @Test
    void aPureToneOnABinKeepsItsAmplitudeTimesTheCoherentGain() {
        int length = 256;
        double[] windowed = Window.HANN.periodic(length);
        for (int n = 0; n < length; n++) {
            windowed[n] *= 3 * Math.cos(2 * Math.PI * 20 * n / length);
        }
        double amplitude = 2 * Math.sqrt(new Fourier(length).power(windowed)[20]) / length;
        assertThat(amplitude).isCloseTo(3 * Window.HANN.figures(length).coherentGain(), within(1e-12));
    }

    @Test
    void figuresHardlyDependOnTheLength() {
        WindowFigures some = Window.BLACKMAN_HARRIS.figures(256);
        WindowFigures many = Window.BLACKMAN_HARRIS.figures(2048);
        assertThat(some.noiseBandwidthBins()).isCloseTo(many.noiseBandwidthBins(), within(1e-12));
        assertThat(some.halfPowerWidthBins()).isCloseTo(many.halfPowerWidthBins(), within(1e-4));
        assertThat(some.highestSidelobeDb()).isCloseTo(many.highestSidelobeDb(), within(0.02));
    }

    @Test
    void refusesLengthsThatMakeNoSense() {
        assertThatThrownBy(() -> Window.HANN.periodic(1)).hasMessageContaining("two samples at least");
        assertThatThrownBy(() -> Window.HANN.figures(102)).hasMessageContaining("multiple of 4");
        assertThatThrownBy(() -> Window.HANN.figures(60)).hasMessageContaining("64 at least");
    }
}
