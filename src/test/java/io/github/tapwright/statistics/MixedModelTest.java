package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MixedModelTest {

    private static Observation of(String group, double value, Double... predictors) {
        return new Observation(group, value, List.of(predictors));
    }

    @Test
    void groupsThatDoNotDifferAreOnTheBoundaryAndKeepTheirFewDegreesOfFreedom() {
        MixedFit fit = MixedModel.randomIntercept(
                List.of(of("a", 1), of("a", 9), of("b", 2), of("b", 8), of("c", 3), of("c", 7)));

        assertThat(fit.groupStandardDeviation()).isZero();
        assertThat(fit.onBoundary()).isTrue();
        assertThat(fit.fixedEffects().get(0).value()).isCloseTo(5, within(1e-12));
        assertThat(fit.fixedEffects().get(0).degreesOfFreedom()).isEqualTo(2);
    }

    @Test
    void theInterceptIsWhereEveryPredictorIsZero() {
        List<Observation> study = new ArrayList<>();
        double[] noise = {0.1, -0.2, 0.1, 0.2, -0.1, -0.1, 0.05, 0, -0.05};
        for (int i = 0; i < 9; i++) {
            double year = 2020 + i % 3;
            study.add(of("No " + i / 3, 10 + i / 3 + 2 * year + noise[i], year));
        }

        MixedFit fit = MixedModel.randomIntercept(study);
        double atTheMean = fit.fixedEffects().get(0).value()
                + 2021 * fit.fixedEffects().get(1).value();

        assertThat(atTheMean).isCloseTo(10 + 1 + 2 * 2021, within(1e-6));
        assertThat(fit.fixedEffects().get(1).degreesOfFreedom()).isLessThanOrEqualTo(5);
        assertThat(fit.fixedEffects().get(0).standardUncertainty())
                .isGreaterThan(100 * fit.fixedEffects().get(1).standardUncertainty());
    }

    @Test
    void groupsInColumnsAreFittedAsTheSameObservationsOneByOne() {
        double[] dampness = {41, 47, 52, 44};
        List<ObservedGroup> columns = new ArrayList<>();
        List<Observation> study = new ArrayList<>();
        for (int g = 0; g < 6; g++) {
            double construction = g % 2;
            double[] values = new double[dampness.length];
            for (int i = 0; i < values.length; i++) {
                values[i] = 100 + g + 0.04 * dampness[i] + Math.sin(7 * g + 3 * i);
                study.add(of("No " + g, values[i], construction, dampness[i]));
            }
            columns.add(ObservedGroup.of(
                    values, new double[] {construction, construction, construction, construction}, dampness));
        }

        assertThat(MixedModel.randomInterceptOf(columns)).isEqualTo(MixedModel.randomIntercept(study));
    }

    @Test
    void refusesColumnsThatDoNotFitEachOther() {
        assertThatThrownBy(() -> ObservedGroup.of(new double[0])).hasMessageContaining("needs values");
        assertThatThrownBy(() -> ObservedGroup.of(new double[] {1, 2}, new double[] {1}))
                .hasMessageContaining("one number of each predictor");
        assertThatThrownBy(() -> ObservedGroup.of(new double[] {1, Double.NaN})).hasMessageContaining("finite");
        List<ObservedGroup> unlike = List.of(
                ObservedGroup.of(new double[] {1, 2}, new double[] {0, 1}), ObservedGroup.of(new double[] {1, 2}));
        assertThatThrownBy(() -> MixedModel.randomInterceptOf(unlike)).hasMessageContaining("same predictors");
    }

    @Test
    void refusesStudiesThatCannotTell() {
        assertThatThrownBy(() -> MixedModel.randomIntercept(List.of())).hasMessageContaining("none");
        assertThatThrownBy(() -> MixedModel.randomIntercept(List.of(of("a", 1), of("a", 2))))
                .hasMessageContaining("two groups");
        assertThatThrownBy(() -> MixedModel.randomIntercept(List.of(of("a", 1), of("b", 2))))
                .hasMessageContaining("values that differ");
        assertThatThrownBy(() -> MixedModel.randomIntercept(List.of(of("a", 1, 2.0), of("b", 2))))
                .hasMessageContaining("same predictors");
        assertThatThrownBy(() -> of("a", Double.NaN)).hasMessageContaining("finite");
        assertThatThrownBy(() -> of("a", 1, Double.POSITIVE_INFINITY)).hasMessageContaining("finite");
    }

    @Test
    void refusesStudiesWithoutScatter() {
        List<Observation> exact = List.of(
                of("a", 1, 0.0), of("a", 2, 1.0), of("b", 5, 0.0), of("b", 6, 1.0), of("c", 9, 0.0), of("c", 10, 1.0));
        List<Observation> alike = List.of(
                of("a", 1, 0.0), of("a", 2, 1.0), of("b", 1, 0.0), of("b", 2, 1.0), of("c", 1, 0.0), of("c", 2, 1.0));

        assertThatThrownBy(() -> MixedModel.randomIntercept(exact)).hasMessageContaining("no scatter");
        assertThatThrownBy(() -> MixedModel.randomIntercept(alike)).hasMessageContaining("no scatter");
    }

    @Test
    void instrumentsMayDifferAThousandTimesMoreThanTheirSittings() {
        List<Observation> study = new ArrayList<>();
        List<double[]> groups = new ArrayList<>();
        double[] noise = {0.01, -0.01, 0.02, -0.02, 0.005, -0.005};
        for (int i = 0; i < 3; i++) {
            double[] group = {180 + 20 * i + noise[2 * i], 180 + 20 * i + noise[2 * i + 1]};
            groups.add(group);
            study.add(of("No " + i, group[0]));
            study.add(of("No " + i, group[1]));
        }

        MixedFit fit = MixedModel.randomIntercept(study);
        OneWayAnova anova = OneWayAnova.of(groups);

        assertThat(fit.groupStandardDeviation())
                .isCloseTo(Math.sqrt((anova.betweenMeanSquare() - anova.withinMeanSquare()) / 2), within(0.001));
        assertThat(fit.residualStandardDeviation()).isCloseTo(Math.sqrt(anova.withinMeanSquare()), within(1e-6));
        assertThat(fit.fixedEffects().get(0).degreesOfFreedom()).isCloseTo(2, within(0.01));
    }

    @Test
    void refusesMorePredictorsThanTheGroupsCanTellApart() {
        assertThatThrownBy(() -> MixedModel.randomIntercept(
                        List.of(of("a", 1, 0.0), of("a", 2, 0.0), of("b", 5, 1.0), of("b", 7, 1.0))))
                .hasMessageContaining("too few groups");
        assertThatThrownBy(() -> MixedModel.randomIntercept(
                        List.of(of("a", 1, 0.0), of("a", 2, 1.0), of("b", 5, 1.0), of("c", 5, 1.5))))
                .hasMessageContaining("too few repeats");
        assertThatThrownBy(() -> MixedModel.randomIntercept(
                        List.of(of("a", 1, 3.0), of("a", 2, 3.0), of("b", 5, 3.0), of("b", 7, 3.0), of("c", 1, 3.0))))
                .hasMessageContaining("told apart");
    }
}
