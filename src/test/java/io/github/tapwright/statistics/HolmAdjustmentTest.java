package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class HolmAdjustmentTest {

    @Test
    void theSmallestIsMultipliedByTheCountAndNoneFallsBelowTheOneBefore() {
        // by hand: 4·0.01, 3·0.02, 2·0.03 (raised to 0.06), 1·0.04 (raised to 0.06)
        assertThat(HolmAdjustment.of(0.04, 0.01, 0.03, 0.02))
                .usingComparatorWithPrecision(1e-12)
                .containsExactly(0.06, 0.04, 0.06, 0.06);
    }

    @Test
    void noneIsAboveOne() {
        assertThat(HolmAdjustment.of(0.9, 0.5)).containsExactly(1, 1);
    }

    @Test
    void oneQuestionNeedsNoAdjustment() {
        assertThat(HolmAdjustment.of(0.03)[0]).isCloseTo(0.03, within(1e-15));
        assertThat(HolmAdjustment.of()).isEmpty();
    }

    @Test
    void refusesWhatIsNoProbability() {
        assertThatThrownBy(() -> HolmAdjustment.of(0.5, 1.2)).hasMessageContaining("1.2");
        assertThatThrownBy(() -> HolmAdjustment.of(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
