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

    /** The same steps with unlike parts of the 5 %, by hand: p/w = 0.005, 0.01, 0.04; 4·0.005, 2·0.01, 1·0.04. */
    @Test
    void aQuestionOfGreaterWeightIsMadeLargerByLess() {
        assertThat(HolmAdjustment.weighted(new double[] {0.04, 0.01, 0.01}, new double[] {1, 2, 1}))
                .usingComparatorWithPrecision(1e-12)
                .containsExactly(0.04, 0.02, 0.02);
        assertThat(HolmAdjustment.weighted(new double[] {0.01, 0.02}, new double[] {0.2, 0.8}))
                .as("only ratios count, and the order is that of p/w")
                .usingComparatorWithPrecision(1e-12)
                .containsExactly(0.025, 0.025);
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
