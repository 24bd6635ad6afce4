package io.github.tapwright.comparison;

import static io.github.tapwright.comparison.InventedSittings.KNOWN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.InventedResults;
import io.github.tapwright.exchange.BenchStudyJson;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.synthesis.Chance;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

class BenchStudyTest {

    private static List<SittingOutline> setUps(double... shifts) {
        List<SittingOutline> sittings = new ArrayList<>();
        for (double shift : shifts) {
            sittings.add(
                    SittingOutline.of(InventedSittings.of(sittings.size() + 1, InventedResults.result(shift), KNOWN)));
        }
        return sittings;
    }

    @Test
    void whatSettingUpAddsIsTheScatterLessWhatFitAndStrikesExplain() {
        BenchStudy study = BenchStudy.of(setUps(0.998, 1, 1.002));

        StudiedResonance.SetUpScatter top = study.resonances().get(1).frequencyHz();
        assertThat(top.reproducibility()).isCloseTo(187.13 * 0.002, within(1e-9));
        assertThat(top.withinSetUp()).isCloseTo(0.113, within(1e-12));
        assertThat(top.betweenSetUps()).isCloseTo(Math.sqrt(0.37426 * 0.37426 - 0.113 * 0.113), within(1e-9));
        assertThat(study.spread().orElseThrow().frequency().degreesOfFreedom()).isEqualTo(2);
        assertThat(study.spread().orElseThrow().level().basis()).isEqualTo(SetUpSpread.Basis.STUDIED);
    }

    @Test
    void aBenchThatMovesNothingAddsNothing() {
        SetUpSpread spread = BenchStudy.of(setUps(1, 1, 1)).spread().orElseThrow();
        assertThat(spread.frequencyShare()).isZero();
        assertThat(spread.qShare()).isZero();
        assertThat(spread.levelDb()).isZero();
    }

    /** Two levels scatter by s_R = 2 dB about 0.3·√2 dB within; the one that is 0 dB in every set-up is no third. */
    @Test
    void theResonanceThatServesAsZeroDoesNotMakeLevelsLookSteadier() {
        BenchStudy study = BenchStudy.of(levels(new double[][] {{-5, 0, -9}, {-3, 0, -7}, {-1, 0, -5}}));

        assertThat(study.resonances()).extracting(r -> r.levelDb().isPresent()).containsExactly(true, false, true);
        assertThat(study.spread().orElseThrow().levelDb()).isCloseTo(Math.sqrt(4 - 2 * 0.09), within(1e-9));
    }

    @Test
    void levelsAreStudiedAgainstOneResonanceWhicheverIsTheStrongest() {
        BenchStudy study = BenchStudy.of(levels(new double[][] {{-1, 0, -9}, {0, -1, -10}, {-1, 0, -9}}));

        assertThat(study.resonances().get(0).levelDb().orElseThrow().mean()).isCloseTo(-1.0 / 3, within(1e-12));
        assertThat(study.resonances().get(1).levelDb()).isEmpty();
        assertThat(study.resonances().get(2).levelDb().orElseThrow().reproducibility())
                .isCloseTo(0, within(1e-9));
    }

    private static List<SittingOutline> levels(double[]... ofSetUps) {
        List<SittingOutline> sittings = new ArrayList<>();
        for (double[] db : ofSetUps) {
            sittings.add(SittingOutline.of(
                    InventedSittings.of(sittings.size() + 1, InventedResults.levels(db[0], db[1], db[2]), KNOWN)));
        }
        return sittings;
    }

    @Test
    void oneResonanceAloneTellsNothingOfLevelsAndTheSpreadSaysSo() {
        List<SittingOutline> sittings = new ArrayList<>();
        for (double shift : new double[] {0.998, 1, 1.002}) {
            sittings.add(SittingOutline.of(
                    InventedSittings.of(sittings.size() + 1, InventedResults.mainTopAlone(shift), KNOWN)));
        }
        BenchStudy study = BenchStudy.of(sittings);
        SetUpSpread spread = study.spread().orElseThrow();

        assertThat(study.studiesLevels()).isFalse();
        assertThat(spread.level()).isEqualTo(SetUpSpread.USUAL.level());
        assertThat(spread.q().basis()).isEqualTo(SetUpSpread.Basis.STUDIED);
        assertThat(spread.basisWords())
                .isEqualTo("frequency and Q measured on this bench, level assumed, not measured on this bench");
        assertThat(SetUpSpread.USUAL.basisWords()).isEqualTo("assumed, not measured on this bench");
        assertThat(BenchStudyJson.of(study))
                .contains("\"level_basis\" : \"assumed, not measured on this bench\"")
                .contains("\"q_basis\" : \"measured on this bench\"");
    }

    @Test
    void whatIsMissingInOneSetUpIsLeftOut() {
        List<SittingOutline> sittings = setUps(1, 1);
        sittings.add(SittingOutline.of(InventedSittings.of(3, InventedResults.nothing(), KNOWN)));
        BenchStudy study = BenchStudy.of(sittings);
        assertThat(study.resonances()).isEmpty();
        assertThat(study.spread()).isEmpty();
    }

    /** 0.3 % of true spread; the estimate's own scatter with 4 degrees of freedom is a third, so means of 300 lie within 3 %. */
    @Test
    void theTrueSpreadIsFoundOnAverage() {
        RandomGenerator chance = Chance.seeded(11);
        double squares = 0;
        int studies = 300;
        for (int i = 0; i < studies; i++) {
            double[] shifts = chance.doubles(5)
                    .map(x -> 1 + 0.003 * chance.nextGaussian())
                    .toArray();
            double share = BenchStudy.of(setUps(shifts)).spread().orElseThrow().frequencyShare();
            squares += share * share;
        }
        assertThat(Math.sqrt(squares / studies)).isCloseTo(0.003, within(0.0003));
    }
}
