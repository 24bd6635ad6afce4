package io.github.tapwright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SectionFilterTest {

    private static final SecondOrderSection SECTION = new SecondOrderSection(0.2, -0.1, 0.3, -1.2, 0.6);
    private static final SecondOrderSection OTHER =
            SecondOrderSection.ofRealRoots(new double[] {1, -1}, new double[] {0.5, -0.3});

    @Test
    void theFirstOutputsFollowTheDifferenceEquation() {
        double[] impulse = {1, 0, 0, 0};
        new SectionFilter(List.of(SECTION)).process(impulse, 4);
        assertThat(impulse[0]).isEqualTo(0.2);
        assertThat(impulse[1]).isCloseTo(-0.1 + 1.2 * 0.2, within(1e-15));
        assertThat(impulse[2]).isCloseTo(0.3 + 1.2 * impulse[1] - 0.6 * 0.2, within(1e-15));
        assertThat(impulse[3]).isCloseTo(1.2 * impulse[2] - 0.6 * impulse[1], within(1e-15));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 100, 1234, 3000, 4000})
    void thePowerGainIsThatOfTheImpulseResponse(double frequencyHz) {
        double[] response = new double[4096];
        response[0] = 1;
        new SectionFilter(List.of(SECTION, OTHER)).process(response, response.length);
        double re = 0;
        double im = 0;
        for (int n = 0; n < response.length; n++) {
            re += response[n] * Math.cos(2 * Math.PI * frequencyHz * n / 8000);
            im += response[n] * Math.sin(2 * Math.PI * frequencyHz * n / 8000);
        }
        double gain = SECTION.powerGain(frequencyHz, 8000) * OTHER.powerGain(frequencyHz, 8000);
        assertThat(gain).isCloseTo(re * re + im * im, within(1e-12));
    }

    @Test
    void cuttingTheSignalIntoBlocksChangesNothing() {
        double[] whole = new double[100];
        Arrays.setAll(whole, n -> Math.sin(n * n));
        double[] first = Arrays.copyOf(whole, 37);
        double[] second = Arrays.copyOfRange(whole, 37, 100);
        SectionFilter inBlocks = new SectionFilter(List.of(SECTION, OTHER));
        inBlocks.process(first, 37);
        inBlocks.process(second, 63);
        new SectionFilter(List.of(SECTION, OTHER)).process(whole, 100);
        assertThat(first).isEqualTo(Arrays.copyOf(whole, 37));
        assertThat(second).isEqualTo(Arrays.copyOfRange(whole, 37, 100));
    }

    @Test
    void aSectionThatRingsForEverIsRefused() {
        assertThatThrownBy(() -> new SecondOrderSection(1, 0, 0, 0, 1)).hasMessageContaining("unit circle");
        assertThatThrownBy(() -> new SecondOrderSection(1, 0, 0, -2, 0.9)).hasMessageContaining("unit circle");
    }
}
