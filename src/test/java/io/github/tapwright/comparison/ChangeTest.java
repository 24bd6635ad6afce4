package io.github.tapwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.statistics.Estimate;
import org.junit.jupiter.api.Test;

class ChangeTest {

    @Test
    void everyUncertaintyAddsInSquares() {
        Change change = Change.between(Estimate.of(100, 1), Estimate.of(110, 2), 4, 10);

        assertThat(change.difference().value()).isEqualTo(10);
        assertThat(change.difference().standardUncertainty()).isCloseTo(11, within(1e-12));
    }

    @Test
    void aDifferenceOutsideTwoStandardUncertaintiesOrSoDiffers() {
        assertThat(Change.between(Estimate.of(100, 0), Estimate.of(101.95, 1), 0, 0)
                        .differs())
                .isFalse();
        assertThat(Change.between(Estimate.of(100, 0), Estimate.of(101.97, 1), 0, 0)
                        .differs())
                .isTrue();
        assertThat(Change.between(Estimate.of(101.97, 1), Estimate.of(100, 0), 0, 0)
                        .differs())
                .isTrue();
    }

    @Test
    void aSpreadThatWouldHideEverythingIsRefused() {
        assertThatExceptionOfType(RefusedEntryException.class).isThrownBy(() -> new SetUpSpread(0.2, 0.05, 1));
        assertThatExceptionOfType(RefusedEntryException.class).isThrownBy(() -> new SetUpSpread(0.003, Double.NaN, 1));
        assertThatExceptionOfType(RefusedEntryException.class).isThrownBy(() -> new SetUpSpread(0.003, 0.05, -1));
    }
}
