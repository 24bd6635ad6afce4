package io.github.tapwright.mode.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.mode.body.BodyReadings.Load;
import io.github.tapwright.mode.body.BodyReadings.Measures;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.MonteCarlo;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Body A, 80 g, 0.040 m², 165 Hz, f_h 127.118 Hz, through readings with uncertainty. */
class BodyModelTest {

    private static final MonteCarlo DRAWS = new MonteCarlo(4000, 5);
    private static final double SHARE = 0.001;
    private static final List<Double> OPEN = List.of(109.92113, 190.81445);
    private static final List<Double> LOADED = List.of(107.457756, 174.582056);
    private static final List<Double> CLOSED = List.of(179.815782);

    private static List<Estimate> around(List<Double> hz) {
        return hz.stream().map(f -> Estimate.of(f, SHARE * f)).toList();
    }

    private static Measures measures() {
        return new Measures(
                Optional.of(Estimate.of(0.0140, 0.0002)),
                Optional.of(Estimate.of(0.0425, 0.0001)),
                Optional.of(Estimate.of(0.0025, 0.0001)),
                Air.ROUND);
    }

    private static BodyModel model(List<Double> open, List<Double> closed, List<Double> loaded) {
        return BodyModel.of(
                new BodyReadings(
                        around(open),
                        Optional.of(around(closed)),
                        Optional.of(new Load(Estimate.of(0.020, 0.00005), false, around(loaded))),
                        measures()),
                DRAWS);
    }

    @Test
    void everyQuantityWithItsUncertainty() {
        BodyModel model = model(OPEN, CLOSED, LOADED);
        assertThat(value(model, BodyQuantity.HELMHOLTZ)).isCloseTo(127.118, within(0.001));
        assertThat(value(model, BodyQuantity.TOP_MASS)).isCloseTo(0.080, within(1e-6));
        assertThat(value(model, BodyQuantity.TOP_MASS_BY_SUM)).isCloseTo(0.080, within(1e-6));
        assertThat(value(model, BodyQuantity.TOP_STIFFNESS)).isCloseTo(85984, within(1.0));
        assertThat(value(model, BodyQuantity.TOP_AREA)).isCloseTo(0.040, within(1e-6));
        assertThat(value(model, BodyQuantity.PLATEAU)).isCloseTo(0.04775, within(5e-6));
        assertThat(value(model, BodyQuantity.HELMHOLTZ_COMPUTED)).isCloseTo(127.118, within(0.001));
        assertThat(model.naiveMassKilograms().orElseThrow()).isCloseTo(0.1028, within(5e-5));
        assertThat(model.answerTo(BodyQuantity.BACK_ALONE)).isInstanceOf(Answer.Missing.class);
        Answer.Inferred mass = known(model, BodyQuantity.TOP_MASS);
        // Straight lines: u(m)/m = 2·0.1 %·√4/(1 − 0.8) = 2 %.
        assertThat(mass.standardUncertainty()).isCloseTo(0.0016, within(0.0002));
        assertThat(mass.interval95().contains(0.080)).isTrue();
    }

    /** Two hundred times the readings are drawn about the truth; the 95 % interval may miss it in about ten. */
    @Test
    void itsIntervalsHoldTheTruthAsOftenAsTheySay() {
        Random random = new Random(11);
        int mass = 0;
        int helmholtz = 0;
        for (int i = 0; i < 200; i++) {
            BodyModel model = BodyModel.of(
                    new BodyReadings(
                            around(shaken(OPEN, random)),
                            Optional.of(around(shaken(CLOSED, random))),
                            Optional.of(new Load(Estimate.of(0.020, 1e-6), false, around(shaken(LOADED, random)))),
                            measures()),
                    new MonteCarlo(1000, i));
            mass += known(model, BodyQuantity.TOP_MASS).interval95().contains(0.080) ? 1 : 0;
            helmholtz += known(model, BodyQuantity.HELMHOLTZ).interval95().contains(127.118) ? 1 : 0;
        }
        assertThat(mass).isBetween(180, 198);
        assertThat(helmholtz).isBetween(180, 198);
    }

    @Test
    void contradictionsAreNamedWithARemedy() {
        BodyModel outside = model(OPEN, List.of(195.0), LOADED);
        assertThat(outside.answerTo(BodyQuantity.HELMHOLTZ))
                .asString()
                .contains("195.0 Hz lies outside 109.9 to 190.8 Hz", "check that the cover was tight");
        assertThat(outside.answerTo(BodyQuantity.TOP_MASS)).isInstanceOf(Answer.Inferred.class);
        BodyModel lighter = model(OPEN, CLOSED, List.of(110.5, 191.0));
        assertThat(lighter.answerTo(BodyQuantity.TOP_MASS)).asString().contains("did not lower the resonances");
        assertThat(lighter.predict(new BodyChange(0.005, 0, 0, 0))).asString().contains("did not lower");
        BodyModel near = model(OPEN, List.of(190.79), LOADED);
        assertThat(near.answerTo(BodyQuantity.HELMHOLTZ)).asString().contains("cannot tell: within their uncertainty");
    }

    @Test
    void theRemedyFitsWhatIsUnsure() {
        Measures rough = new Measures(
                Optional.of(Estimate.of(0.0140, 0.0002)),
                Optional.of(Estimate.of(0.0425, 0.04)),
                Optional.of(Estimate.of(0.0025, 0.0001)),
                Air.ROUND);
        BodyModel unmeasured =
                BodyModel.of(new BodyReadings(around(OPEN), Optional.empty(), Optional.empty(), rough), DRAWS);
        assertThat(unmeasured.answerTo(BodyQuantity.HELMHOLTZ_COMPUTED))
                .asString()
                .contains("measure the box, its hole and its top more exactly")
                .doesNotContain("tap each state");
        assertThat(model(OPEN, CLOSED, LOADED).predict(new BodyChange(-0.0785, 0, 0, 0)))
                .asString()
                .contains("or choose a smaller change");
    }

    /** Sums need the mass with the hole open; a maker who put it on with the hole covered must be told so. */
    @Test
    void aMassWithTheHoleCoveredDoesNotAnswerForSums() {
        BodyModel model = BodyModel.of(
                new BodyReadings(
                        around(OPEN),
                        Optional.of(around(CLOSED)),
                        Optional.of(new Load(Estimate.of(0.020, 0.00005), true, around(List.of(165.0)))),
                        measures()),
                DRAWS);
        assertThat(model.answerTo(BodyQuantity.TOP_MASS)).isInstanceOf(Answer.Inferred.class);
        assertThat(model.answerTo(BodyQuantity.TOP_MASS_BY_SUM)).asString().contains("the hole open together give it");
    }

    @Test
    void aMassThatRaisedOneResonanceIsNotAskedForAgain() {
        BodyModel model = model(OPEN, CLOSED, List.of(104.0, 195.0));
        assertThat(model.answerTo(BodyQuantity.TOP_MASS)).isInstanceOf(Answer.Inferred.class);
        assertThat(model.answerTo(BodyQuantity.TOP_MASS_BY_SUM)).asString().contains("did not lower the resonances");
    }

    @Test
    void whatIsMissingIsNamed() {
        BodyModel bare = BodyModel.of(
                new BodyReadings(
                        around(OPEN),
                        Optional.empty(),
                        Optional.empty(),
                        new Measures(Optional.empty(), Optional.empty(), Optional.empty(), Air.ROUND)),
                DRAWS);
        assertThat(bare.answerTo(BodyQuantity.HELMHOLTZ))
                .isEqualTo(new Answer.Missing("one more sitting with the hole covered gives it"));
        assertThat(bare.predict(BodyChange.NONE)).asString().contains("hole covered");
        assertThat(bare.answers()).allSatisfy((q, a) -> assertThat(a).isInstanceOf(Answer.Missing.class));
    }

    /** Adding the 20 g in the model gives what the body with 20 g has; taking nothing away changes nothing. */
    @Test
    void whatIfAgreesWithTheForwardModel() {
        BodyModel model = model(OPEN, CLOSED, LOADED);
        List<Prediction.Moved> heavier = foreseen(model.predict(new BodyChange(0.020, 0, 0, 0)));
        assertThat(heavier.get(0).afterHz().value()).isCloseTo(107.457756, within(1e-4));
        assertThat(heavier.get(1).afterHz().value()).isCloseTo(174.582056, within(1e-4));
        assertThat(heavier.get(1).shiftHz().value()).isCloseTo(-16.2324, within(1e-3));
        assertThat(foreseen(model.predict(BodyChange.NONE)).get(1).shiftHz().value())
                .isCloseTo(0, within(1e-6));
        CoupledBody wider = new CoupledBody(
                Air.ROUND,
                0.0145,
                new Soundhole(0.0435, 0.0025, Bodies.LOSSLESS),
                Plate.lossless(0.080, 0.040, 165 * Math.sqrt(0.95)),
                Optional.empty(),
                io.github.tapwright.mode.HoleState.OPEN);
        List<Prediction.Moved> all = foreseen(model.predict(new BodyChange(0, -0.05, 0.001, 0.0005)));
        assertThat(all.get(0).afterHz().value()).isCloseTo(wider.poles().get(0).frequencyHz(), within(1e-4));
        assertThat(all.get(1).afterHz().value()).isCloseTo(wider.poles().get(1).frequencyHz(), within(1e-4));
        assertThat(model.predict(new BodyChange(-0.2, 0, 0, 0))).asString().contains("choose a smaller one");
    }

    private static List<Double> shaken(List<Double> hz, Random random) {
        return hz.stream().map(f -> f * (1 + SHARE * random.nextGaussian())).toList();
    }

    private static List<Prediction.Moved> foreseen(Prediction prediction) {
        return ((Prediction.Foreseen) prediction).resonances();
    }

    private static Answer.Inferred known(BodyModel model, BodyQuantity quantity) {
        return model.answerTo(quantity).inferred().orElseThrow();
    }

    private static double value(BodyModel model, BodyQuantity quantity) {
        return known(model, quantity).value();
    }
}
