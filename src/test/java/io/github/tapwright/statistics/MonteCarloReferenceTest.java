package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.statistics.InputQuantity.Measured;
import io.github.tapwright.statistics.InputQuantity.Rectangular;
import io.github.tapwright.statistics.InputQuantity.Swinging;
import io.github.tapwright.statistics.InputQuantity.Triangular;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The additive examples of [GUM-S1], 9.2; 200 000 draws leave some 0.02 of play at the ends of an interval. */
class MonteCarloReferenceTest {

    private static final MonteCarlo DRAWS = new MonteCarlo(200_000, 20_260_101);
    private static final double HALF = Math.sqrt(3);
    private static final InputQuantity RECTANGULAR = new Rectangular(new Interval(-HALF, HALF));

    private static Propagation sum(InputQuantity... inputs) {
        return DRAWS.propagate(List.of(inputs), x -> Arrays.stream(x).sum());
    }

    @Test
    void fourRectangularInputs() {
        Propagation sum = DRAWS.propagate(
                Collections.nCopies(4, RECTANGULAR), x -> Arrays.stream(x).sum());

        // table 3: u = 2.00, ±3.88
        assertThat(sum.mean()).isCloseTo(0, within(4 * sum.uncertaintyOfMean()));
        assertThat(sum.standardUncertainty()).isCloseTo(2.00, within(0.01));
        assertThat(sum.symmetric95().upper()).isCloseTo(3.88, within(0.03));
        assertThat(sum.symmetric95().lower()).isCloseTo(-3.88, within(0.03));
        assertThat(sum.shortest95().width()).isCloseTo(2 * 3.88, within(0.05));
        assertThat(sum.trials()).isEqualTo(200_000);
    }

    @Test
    void fourNormalInputs() {
        Propagation sum = DRAWS.propagate(
                Collections.nCopies(4, new Measured(Estimate.of(0, 1))),
                x -> Arrays.stream(x).sum());

        // table 2: u = 2.00, ±3.92
        assertThat(sum.standardUncertainty()).isCloseTo(2.00, within(0.01));
        assertThat(sum.symmetric95().upper()).isCloseTo(3.92, within(0.03));
    }

    @Test
    void oneInputFarWiderThanTheRest() {
        Propagation sum =
                sum(RECTANGULAR, RECTANGULAR, RECTANGULAR, new Rectangular(new Interval(-10 * HALF, 10 * HALF)));

        // table 4: u = 10.1, ±17.0, from memory, to be verified
        assertThat(sum.standardUncertainty()).isCloseTo(10.1, within(0.07));
        assertThat(sum.symmetric95().upper()).isCloseTo(17.0, within(0.06));
    }

    @Test
    void fewDegreesOfFreedomMakeLongTails() {
        // Student's t with ν = 4 has the standard deviation √2 and its 97.5 % quantile at 2.776, [GUM] table G.2
        Propagation measured = sum(new Measured(new Estimate(10, 1, 4)));

        assertThat(measured.standardUncertainty()).isCloseTo(Math.sqrt(2), within(0.02));
        assertThat(measured.symmetric95().upper()).isCloseTo(12.776, within(0.04));
    }

    @Test
    void triangleAndSineHaveTheirKnownScatter() {
        Interval unit = new Interval(-1, 1);

        // [GUM], 4.3.9 and H: a/√6; a/√2
        assertThat(sum(new Triangular(unit)).standardUncertainty()).isCloseTo(1 / Math.sqrt(6), within(0.002));
        assertThat(sum(new Swinging(unit)).standardUncertainty()).isCloseTo(1 / Math.sqrt(2), within(0.002));
    }

    @Test
    void aLeaningResultHasAShorterIntervalThanTheSymmetricOne() {
        Propagation squared = DRAWS.propagate(List.of(new Measured(Estimate.of(0, 1))), x -> x[0] * x[0]);

        // χ² with one degree of freedom: 97.5 % quantile 5.024; the shortest range begins at zero and ends at 3.841
        assertThat(squared.symmetric95().upper()).isCloseTo(5.024, within(0.06));
        assertThat(squared.shortest95().lower()).isCloseTo(0, within(1e-3));
        assertThat(squared.shortest95().upper()).isCloseTo(3.841, within(0.05));
    }

    @Test
    void theSameSeedGivesTheSameResult() {
        MonteCarlo few = new MonteCarlo(1000, 3);
        List<InputQuantity> inputs = List.of(RECTANGULAR);

        assertThat(few.propagate(inputs, x -> x[0])).isEqualTo(few.propagate(inputs, x -> x[0]));
        assertThat(few.propagate(inputs, x -> x[0])).isNotEqualTo(new MonteCarlo(1000, 4).propagate(inputs, x -> x[0]));
    }

    @Test
    void refusesTooFewDrawsAndFormulasThatDoNotHold() {
        assertThatThrownBy(() -> new MonteCarlo(999, 1)).hasMessageContaining("1000");
        assertThatThrownBy(() -> DRAWS.propagate(List.of(RECTANGULAR), x -> Math.log(x[0])))
                .hasMessageContaining("gives no number");
    }
}
