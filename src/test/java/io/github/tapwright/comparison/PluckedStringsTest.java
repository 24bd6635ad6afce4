package io.github.tapwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.statistics.Estimate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PluckedStringsTest {

    /** s = √2 dB from two plucks stands for the string plucked once too, and is known from one degree of freedom, not from two. */
    @Test
    void aScatterThatIsLentIsCountedOnce() {
        Estimate mean = new PluckedStrings(Map.of(1, List.of(69.0, 71.0), 2, List.of(74.0))).mean(Set.of(1, 2));

        assertThat(mean.value()).isCloseTo(72, within(1e-12));
        assertThat(mean.standardUncertainty()).isCloseTo(Math.sqrt(0.25 + 0.5), within(1e-12));
        assertThat(mean.degreesOfFreedom()).isEqualTo(1);
    }

    @Test
    void whereEveryStringWasPluckedOnceNothingIsKnownOfTheScatter() {
        PluckedStrings once = new PluckedStrings(Map.of(1, List.of(70.0), 2, List.of(74.0)));

        assertThat(once.tellScatter()).isFalse();
        assertThat(once.mean(Set.of(1, 2)).standardUncertainty()).isZero();
    }
}
