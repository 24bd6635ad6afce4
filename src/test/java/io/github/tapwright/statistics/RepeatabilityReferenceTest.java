package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.validation.DataFile;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Balanced studies, whose variances [PinheiroBates2000] and [Bates2015] print to as many digits as are asked for here. */
class RepeatabilityReferenceTest {

    @Test
    void rails() {
        Repeatability study =
                Repeatability.of(DataFile.read("mixed-model/rail.csv").groups());

        assertThat(study.repeatability().standardDeviation()).isCloseTo(4.020779, within(5e-7));
        assertThat(study.betweenSetUps().standardDeviation()).isCloseTo(24.80547, within(5e-6));
        assertThat(study.reproducibility().standardDeviation()).isCloseTo(25.1292, within(5e-5));
        assertThat(study.repeatabilityLimit()).isCloseTo(11.258, within(5e-4));
        assertThat(study.reproducibilityLimit()).isCloseTo(2.8 * 25.1292, within(2e-4));
        assertThat(study.repeatability().degreesOfFreedom()).isEqualTo(12);
        assertThat(study.setUps()).isEqualTo(6);
        assertThat(study.results()).isEqualTo(18);
    }

    @Test
    void dyestuff() {
        Repeatability study =
                Repeatability.of(DataFile.read("mixed-model/dyestuff.csv").groups());

        assertThat(study.repeatability().standardDeviation()).isCloseTo(Math.sqrt(2451.25), within(1e-9));
        assertThat(study.betweenSetUps().standardDeviation()).isCloseTo(Math.sqrt(1764.05), within(1e-9));
        assertThat(study.reproducibility().standardDeviation()).isCloseTo(64.9253, within(5e-5));
        // χ² with 24 degrees of freedom: 12.401 and 39.364, from memory, to be verified
        assertThat(study.repeatability().interval95().lower()).isCloseTo(Math.sqrt(58830 / 39.364), within(0.001));
        assertThat(study.repeatability().interval95().upper()).isCloseTo(Math.sqrt(58830 / 12.401), within(0.002));
    }

    @Test
    void whereTheRepeatsExplainEverythingSettingUpAddsNothing() {
        Repeatability study = Repeatability.of(List.of(new double[] {1, 5, 9}, new double[] {3, 6, 9}));

        assertThat(study.betweenSetUps().standardDeviation()).isZero();
        assertThat(study.betweenSetUps().interval95().lower()).isZero();
        assertThat(study.betweenSetUps().interval95().upper()).isPositive();
        assertThat(study.reproducibility().standardDeviation())
                .isEqualTo(study.repeatability().standardDeviation());
    }

    @Test
    void moreRepeatsDoNotTakeTheSetUpAway() {
        Repeatability study =
                Repeatability.of(DataFile.read("mixed-model/rail.csv").groups());

        assertThat(study.uncertaintyOfMean(1)).isCloseTo(25.1292, within(5e-5));
        assertThat(study.uncertaintyOfMean(1_000_000)).isCloseTo(24.80547, within(1e-5));
        assertThatThrownBy(() -> study.uncertaintyOfMean(0)).hasMessageContaining("at least one");
    }

    @Test
    void setUpsNeedNotHaveEquallyManyRepeats() {
        Repeatability study = Repeatability.of(List.of(new double[] {1, 2}, new double[] {4}, new double[] {7, 8, 9}));

        // by hand: MS within 2.5/3, MS between 52.3333/2, n̄ = (6 − 14/6)/2 = 11/6
        assertThat(study.repeatability().standardDeviation()).isCloseTo(Math.sqrt(2.5 / 3), within(1e-12));
        double between = 2 * square(1.5 - 31 / 6.0) + square(4 - 31 / 6.0) + 3 * square(8 - 31 / 6.0);
        assertThat(study.betweenSetUps().standardDeviation())
                .isCloseTo(Math.sqrt((between / 2 - 2.5 / 3) / (11 / 6.0)), within(1e-12));
    }

    @Test
    void anInstrumentThatNeverVariesHasNoScatter() {
        Repeatability study = Repeatability.of(List.of(new double[] {3, 3}, new double[] {3, 3}));

        assertThat(study.reproducibility().standardDeviation()).isZero();
        assertThat(study.reproducibility().interval95()).isEqualTo(new Interval(0, 0));
    }

    private static double square(double x) {
        return x * x;
    }
}
