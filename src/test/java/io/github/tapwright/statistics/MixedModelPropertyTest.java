package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.random.RandomDataGenerator;
import org.junit.jupiter.api.Test;

/** Intervals of the mixed model in made studies: two constructions, five instruments each, three sittings each, some missing. */
class MixedModelPropertyTest {

    private static final int STUDIES = 250;
    private static final double DIFFERENCE = 3;
    private static final double PER_PERCENT = -0.4;

    private final RandomDataGenerator random = new RandomDataGenerator(20_260_102);

    private double normal(double mean, double deviation) {
        return mean + deviation * random.nextNormal(0, 1);
    }

    /** Sittings with the construction (0 or 1) and the humidity as predictors. */
    private List<Observation> study(double between) {
        List<Observation> study = new ArrayList<>();
        for (int instrument = 0; instrument < 10; instrument++) {
            double own = normal(200, between);
            double construction = instrument % 2;
            int sittings = instrument < 3 ? 2 : 4;
            for (int sitting = 0; sitting < sittings; sitting++) {
                double humidity = normal(0, 5);
                double value = own + DIFFERENCE * construction + PER_PERCENT * humidity + normal(0, 1);
                study.add(new Observation("No " + instrument, value, List.of(construction, humidity)));
            }
        }
        return study;
    }

    private double[] coverage(double between) {
        int difference = 0;
        int slope = 0;
        int naive = 0;
        for (int i = 0; i < STUDIES; i++) {
            List<Observation> study = study(between);
            MixedFit fit = MixedModel.randomIntercept(study);
            difference += holds(fit.fixedEffects().get(1), DIFFERENCE);
            slope += holds(fit.fixedEffects().get(2), PER_PERCENT);
            naive += holds(asIfIndependent(study), DIFFERENCE);
        }
        System.out.printf(
                "mixed model, spread of instruments %.1f: difference %.1f %%, humidity %.1f %%, as if independent %.1f %%%n",
                between, 100.0 * difference / STUDIES, 100.0 * slope / STUDIES, 100.0 * naive / STUDIES);
        return new double[] {(double) difference / STUDIES, (double) slope / STUDIES, (double) naive / STUDIES};
    }

    private static int holds(Estimate estimate, double truth) {
        return Math.abs(estimate.value() - truth) <= estimate.halfWidth95() ? 1 : 0;
    }

    private static Estimate asIfIndependent(List<Observation> study) {
        double[][] columns = new double[2][];
        for (int j = 0; j < 2; j++) {
            int column = j;
            columns[j] =
                    study.stream().mapToDouble(o -> o.predictors().get(column)).toArray();
        }
        return LinearFit.of(study.stream().mapToDouble(Observation::value).toArray(), columns)
                .coefficients()
                .get(1);
    }

    @Test
    void instrumentsThatDifferMoreThanTheirSittings() {
        double[] coverage = coverage(2);

        assertThat(coverage[0]).isBetween(0.92, 0.98);
        assertThat(coverage[1]).isBetween(0.92, 0.98);
        assertThat(coverage[2]).as("without the model").isLessThan(0.85);
    }

    @Test
    void instrumentsThatHardlyDifferAreNotMadeToSeemSurer() {
        double[] coverage = coverage(0.2);

        assertThat(coverage[0]).isGreaterThan(0.93);
        assertThat(coverage[1]).isGreaterThan(0.92);
    }
}
