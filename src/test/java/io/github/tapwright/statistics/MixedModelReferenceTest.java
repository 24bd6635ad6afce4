package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.validation.DataFile;
import io.github.tapwright.validation.PublishedTable;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Published fits, validation/mixed-model; every number to the digits the table says were printed. */
class MixedModelReferenceTest {

    @Test
    void rail() {
        MixedFit fit = MixedModel.randomIntercept(study("rail"));

        assertPublished("rail", "intercept", fit.fixedEffects().get(0).value());
        assertPublished("rail", "intercept_se", fit.fixedEffects().get(0).standardUncertainty());
        assertPublished("rail", "group_sd", fit.groupStandardDeviation());
        assertPublished("rail", "residual_sd", fit.residualStandardDeviation());
        assertPublished("rail", "criterion", fit.remlCriterion());
        assertThat(fit.onBoundary()).isFalse();
        assertThat(fit.groups()).isEqualTo(6);
        assertThat(fit.observations()).isEqualTo(18);
    }

    @Test
    void dyestuff() {
        MixedFit fit = MixedModel.randomIntercept(study("dyestuff"));

        assertPublished("dyestuff", "intercept", fit.fixedEffects().get(0).value());
        assertPublished("dyestuff", "intercept_se", fit.fixedEffects().get(0).standardUncertainty());
        assertPublished("dyestuff", "group_variance", square(fit.groupStandardDeviation()));
        assertPublished("dyestuff", "residual_variance", square(fit.residualStandardDeviation()));
        assertPublished("dyestuff", "criterion", fit.remlCriterion());
    }

    @Test
    void inABalancedStudyTheModelIsTheAnalysisOfVariance() {
        List<double[]> groups = DataFile.read("mixed-model/rail.csv").groups();
        MixedFit fit = MixedModel.randomIntercept(study("rail"));
        OneWayAnova anova = OneWayAnova.of(groups);
        Summary ofMeans = Summary.of(
                groups.stream().mapToDouble(g -> Summary.of(g).mean()).toArray());

        assertThat(fit.groupStandardDeviation())
                .isCloseTo(Math.sqrt((anova.betweenMeanSquare() - anova.withinMeanSquare()) / 3), within(1e-5));
        assertThat(fit.residualStandardDeviation()).isCloseTo(Math.sqrt(anova.withinMeanSquare()), within(1e-6));
        assertThat(fit.fixedEffects().get(0).standardUncertainty())
                .isCloseTo(ofMeans.ofMean().standardUncertainty(), within(1e-5));
        assertThat(fit.fixedEffects().get(0).degreesOfFreedom()).isCloseTo(5, within(0.001));
    }

    @Test
    void sleepstudyWithAPredictorThatVariesWithinGroups() {
        MixedFit fit = MixedModel.randomIntercept(study("sleepstudy"));

        assertPublished("sleepstudy", "intercept", fit.fixedEffects().get(0).value());
        assertPublished("sleepstudy", "intercept_se", fit.fixedEffects().get(0).standardUncertainty());
        assertPublished("sleepstudy", "slope", fit.fixedEffects().get(1).value());
        assertPublished("sleepstudy", "slope_se", fit.fixedEffects().get(1).standardUncertainty());
        assertPublished("sleepstudy", "group_variance", square(fit.groupStandardDeviation()));
        assertPublished("sleepstudy", "residual_variance", square(fit.residualStandardDeviation()));
        assertPublished("sleepstudy", "criterion", fit.remlCriterion());
        // ten days of eighteen people: 180 values − 18 people − 1 slope
        assertThat(fit.fixedEffects().get(1).degreesOfFreedom()).isCloseTo(161, within(0.01));
    }

    private static void assertPublished(String dataset, String quantity, double computed) {
        var row = PublishedTable.rows("mixed-model/published.csv")
                .filter(r ->
                        r.text("dataset").equals(dataset) && r.text("quantity").equals(quantity))
                .findFirst()
                .orElseThrow();
        assertThat(computed)
                .as(quantity)
                .isCloseTo(row.number("value"), within(0.51 * Math.pow(10, -row.whole("decimals"))));
    }

    private static double square(double x) {
        return x * x;
    }

    /** Rows of a file with columns group, y and perhaps x. */
    static List<Observation> study(String dataset) {
        DataFile data = DataFile.read("mixed-model/" + dataset + ".csv");
        List<String> groups = data.words("group");
        double[] y = data.column("y");
        List<Observation> study = new ArrayList<>();
        for (int i = 0; i < y.length; i++) {
            List<Double> x = dataset.equals("sleepstudy") ? List.of(data.column("x")[i]) : List.of();
            study.add(new Observation(groups.get(i), y[i], x));
        }
        return study;
    }
}
