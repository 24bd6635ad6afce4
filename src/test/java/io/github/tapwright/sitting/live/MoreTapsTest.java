package io.github.tapwright.sitting.live;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.mode.Resonance;
import io.github.tapwright.statistics.Estimate;
import org.junit.jupiter.api.Test;

class MoreTapsTest {

    @Test
    void uncertaintyShrinksWithTheRootOfTheTaps() {
        assertThat(MoreTaps.until(resonance(0.6, 4), 0.3).more()).contains(12);
        assertThat(MoreTaps.until(resonance(0.34, 7), 0.3).text("main top"))
                .isEqualTo("2 more taps bring main top to ±0.3 Hz");
        assertThat(MoreTaps.until(resonance(0.301, 7), 0.3).text("main top"))
                .isEqualTo("1 more tap brings main top to ±0.3 Hz");
    }

    @Test
    void saysWhenItIsEnough() {
        assertThat(MoreTaps.until(resonance(0.3, 5), 0.3).more()).contains(0);
        assertThat(MoreTaps.until(resonance(0.21, 5), 0.3).text("main air"))
                .isEqualTo("main air is known to ±0.2 Hz: enough");
    }

    @Test
    void doesNotPretendToKnow() {
        assertThat(MoreTaps.until(resonance(0.6, 2), 0.3).more()).isEmpty();
        assertThat(MoreTaps.until(resonance(3, 4), 0.3).text("main top")).contains("cannot tell", "mend the set-up");
    }

    private static Resonance resonance(double u, int strikes) {
        return new Resonance(
                Estimate.of(190, u), Estimate.of(30, 1), Estimate.of(0.4, 0.01), Estimate.of(0, 0.1), strikes, "");
    }
}
