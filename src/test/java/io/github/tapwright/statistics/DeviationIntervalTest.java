package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DeviationIntervalTest {

    /** χ²_0.025(4) = 0.4844 and χ²_0.975(4) = 11.1433, as any table has them. */
    @Test
    void fiveFiguresKnowTheirDeviationToAFactorOfThree() {
        Interval interval = DeviationInterval.of95(1, 4);
        assertThat(interval.lower()).isCloseTo(Math.sqrt(4 / 11.1433), within(1e-4));
        assertThat(interval.upper()).isCloseTo(Math.sqrt(4 / 0.4844), within(1e-3));
    }
}
