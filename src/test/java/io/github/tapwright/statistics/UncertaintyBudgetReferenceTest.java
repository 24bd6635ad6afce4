package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.statistics.UncertaintyBudget.Component;
import io.github.tapwright.statistics.UncertaintyBudget.Correlation;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The worked examples H.1 and H.2 of [GUM]; tolerances are half the last printed digit. */
class UncertaintyBudgetReferenceTest {

    @Test
    void anEndGauge() {
        double standard = 50_000_623;
        Component gauge = new Component("standard's length in nm", new Estimate(standard, 25, 18), 1);
        Component compared = new Component("difference of lengths in nm", new Estimate(215, 9.7, 25.6), 1);
        Component expansion = new Component("expansion of the standard per °C", Estimate.of(11.5e-6, 1.2e-6), 0);
        Component temperature = new Component("deviation of temperature in °C", Estimate.of(-0.1, 0.41), 0);
        Component expansions =
                new Component("difference of expansions per °C", new Estimate(0, 0.58e-6, 50), standard * 0.1);
        Component temperatures =
                new Component("difference of temperatures in °C", new Estimate(0, 0.029, 2), -standard * 11.5e-6);

        UncertaintyBudget budget = UncertaintyBudget.independent(
                standard + 215, gauge, compared, expansion, temperature, expansions, temperatures);
        Estimate length = budget.combined();

        assertThat(length.value()).isEqualTo(50_000_838);
        assertThat(length.standardUncertainty()).isCloseTo(31.71, within(0.005));
        assertThat(length.degreesOfFreedom()).isCloseTo(16.66, within(0.05));
        assertThat(expansions.contribution()).isCloseTo(2.9, within(0.05));
        assertThat(temperatures.contribution()).isCloseTo(-16.7, within(0.05));
        // the guide cuts the degrees of freedom to 16: U = 2.92 · 32 = 93
        assertThat(StudentQuantile.of(0.995, 16) * length.standardUncertainty()).isCloseTo(93, within(0.5));
        assertThat(budget.share(gauge)).isCloseTo(625 / (31.71 * 31.71), within(0.001));
    }

    /** Five readings taken together, table H.2, from memory, to be verified: volts, milliamperes, radians. */
    private static final double[][] READINGS = {
        {5.007, 4.994, 5.005, 4.990, 4.999},
        {19.663, 19.639, 19.640, 19.685, 19.678},
        {1.0456, 1.0438, 1.0468, 1.0428, 1.0433}
    };

    private static final List<String> NAMES = List.of("voltage", "current", "phase");

    @Test
    void resistanceAndReactanceMeasuredTogether() {
        double ohms = 1000 * mean(0) / mean(1);
        double cos = ohms * Math.cos(mean(2));
        double sin = ohms * Math.sin(mean(2));

        Estimate resistance = together(cos, cos / mean(0), -cos / mean(1), -sin);
        Estimate reactance = together(sin, sin / mean(0), -sin / mean(1), cos);
        Estimate size = together(ohms, ohms / mean(0), -ohms / mean(1), 0);

        assertThat(resistance.value()).isCloseTo(127.732, within(0.0005));
        assertThat(resistance.standardUncertainty()).isCloseTo(0.071, within(0.0005));
        assertThat(reactance.value()).isCloseTo(219.847, within(0.0005));
        // 0.2956 from the readings; the guide goes on with correlations of two digits
        assertThat(reactance.standardUncertainty()).isCloseTo(0.295, within(0.001));
        assertThat(size.value()).isCloseTo(254.260, within(0.0005));
        assertThat(size.standardUncertainty()).isCloseTo(0.236, within(0.0005));
        assertThat(resistance.degreesOfFreedom()).isEqualTo(4);
    }

    private static double mean(int quantity) {
        return Summary.of(READINGS[quantity]).mean();
    }

    private static Estimate together(double value, double... sensitivities) {
        List<Component> components = IntStream.range(0, 3)
                .mapToObj(
                        i -> new Component(NAMES.get(i), Summary.of(READINGS[i]).ofMean(), sensitivities[i]))
                .toList();
        return new UncertaintyBudget(
                        value, components, List.of(correlation(0, 1), correlation(0, 2), correlation(1, 2)))
                .combined();
    }

    private static Correlation correlation(int one, int other) {
        double products = 0;
        for (int i = 0; i < 5; i++) {
            products += (READINGS[one][i] - mean(one)) * (READINGS[other][i] - mean(other));
        }
        double scatter = Summary.of(READINGS[one]).standardDeviation()
                * Summary.of(READINGS[other]).standardDeviation();
        return new Correlation(NAMES.get(one), NAMES.get(other), products / 4 / scatter);
    }

    @Test
    void partsThatCancelLeaveNothing() {
        Component one = new Component("one", Estimate.of(1, 0.5), 1);
        Component other = new Component("other", Estimate.of(1, 0.5), -1);
        UncertaintyBudget budget =
                new UncertaintyBudget(0, List.of(one, other), List.of(new Correlation("one", "other", 1)));

        assertThat(budget.combined().standardUncertainty()).isZero();
        assertThat(budget.share(one)).isZero();
    }

    @Test
    void whatIsCertainNeedsNoDegreesOfFreedom() {
        Component certain = new Component("certain", new Estimate(1, 0, 3), 1);

        assertThat(UncertaintyBudget.independent(1, certain).combined()).isEqualTo(Estimate.of(1, 0));
        assertThat(new UncertaintyBudget(
                                1,
                                List.of(certain, new Component("b", new Estimate(1, 0, 3), 1)),
                                List.of(new Correlation("certain", "b", 0.5)))
                        .combined())
                .isEqualTo(Estimate.of(1, 0));
    }

    @Test
    void refusesWhatIsNoBudget() {
        Component part = new Component("part", Estimate.of(1, 1), 1);
        assertThatThrownBy(() -> UncertaintyBudget.independent(1)).hasMessageContaining("needs parts");
        assertThatThrownBy(() -> UncertaintyBudget.independent(1, part, part)).hasMessageContaining("of its own");
        assertThatThrownBy(() -> new UncertaintyBudget(1, List.of(part), List.of(new Correlation("part", "b", 0))))
                .hasMessageContaining("no part");
        assertThatThrownBy(() -> new UncertaintyBudget(1, List.of(part), List.of(new Correlation("b", "part", 0))))
                .hasMessageContaining("no part");
        assertThatThrownBy(() -> new Correlation("a", "b", 1.1)).hasMessageContaining("between −1 and 1");
        assertThatThrownBy(() -> new Correlation("a", "a", 1)).hasMessageContaining("two parts");
        assertThatThrownBy(() -> new Component("a", Estimate.of(1, 1), Double.NaN))
                .hasMessageContaining("finite");
    }
}
