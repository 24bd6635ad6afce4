package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Worked examples of Welch's t as [RosettaCode] prints them; tolerances are those of the printed digits. */
class WelchDifferenceReferenceTest {

    private static final double[] FIRST = {
        27.5, 21.0, 19.0, 23.6, 17.0, 17.9, 16.9, 20.1, 21.9, 22.6, 23.1, 19.6, 19.0, 21.7, 21.4
    };
    private static final double[] SECOND = {
        27.1, 22.0, 20.8, 23.4, 23.4, 23.5, 25.8, 22.0, 24.8, 20.2, 21.9, 22.1, 22.9, 20.5, 24.4
    };
    private static final double[] GAUGE = {30.02, 29.99, 30.11, 29.97, 30.01, 29.99};
    private static final double[] OTHER_GAUGE = {29.89, 29.93, 29.72, 29.98, 30.02, 29.98};

    @Test
    void fifteenAgainstFifteen() {
        Estimate difference = WelchDifference.of(FIRST, SECOND);

        assertThat(difference.value() / difference.standardUncertainty()).isCloseTo(2.4553560, within(1e-6));
        assertThat(difference.degreesOfFreedom()).isCloseTo(24.988529, within(1e-6));
        assertThat(StudentProbability.twoSided(difference)).isCloseTo(0.021378001, within(1e-8));
    }

    @Test
    void sixAgainstSix() {
        Estimate difference = WelchDifference.of(OTHER_GAUGE, GAUGE);

        assertThat(difference.value()).isCloseTo(0.095, within(1e-12));
        assertThat(difference.degreesOfFreedom()).isCloseTo(7.030560, within(1e-6));
        assertThat(StudentProbability.twoSided(difference)).isCloseTo(0.0907733, within(1e-7));
        assertThat(difference.value() - difference.halfWidth95()).isCloseTo(-0.019569, within(1e-6));
        assertThat(difference.value() + difference.halfWidth95()).isCloseTo(0.209569, within(1e-6));
        assertThat(difference.differsFromZero()).isFalse();
    }

    @Test
    void withoutScatterTheDifferenceIsCertain() {
        Estimate difference = WelchDifference.of(new double[] {1, 1}, new double[] {2, 2, 2});

        assertThat(difference).isEqualTo(new Estimate(1, 0, 3));
        assertThat(StudentProbability.twoSided(difference)).isZero();
        assertThat(StudentProbability.twoSided(Estimate.of(0, 0))).isOne();
    }

    @Test
    void aKnownScatterIsNormal() {
        // normal distribution, two-sided 5 %: 1.959964, [GUM] table G.1 prints 1.960
        assertThat(StudentProbability.twoSided(Estimate.of(-1.959964, 1))).isCloseTo(0.05, within(1e-7));
    }
}
