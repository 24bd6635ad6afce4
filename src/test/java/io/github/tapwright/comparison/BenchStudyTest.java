package io.github.tapwright.comparison;

import static io.github.tapwright.comparison.InventedSittings.KNOWN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.InventedResults;
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
        assertThat(study.spread().orElseThrow().degreesOfFreedom()).isEqualTo(2);
        assertThat(study.spread().orElseThrow().basis()).isEqualTo(SetUpSpread.Basis.STUDIED);
    }

    @Test
    void aBenchThatMovesNothingAddsNothing() {
        SetUpSpread spread = BenchStudy.of(setUps(1, 1, 1)).spread().orElseThrow();
        assertThat(spread.frequencyShare()).isZero();
        assertThat(spread.qShare()).isZero();
        assertThat(spread.levelDb()).isZero();
    }

    /** s_R of 0, 2 and −2 dB is 2 dB, less the 0.3 dB of fit and strikes; the strongest resonance's 0 dB would have made it less. */
    @Test
    void theStrongestResonanceKnowsNothingOfHowLevelsScatter() {
        List<SittingOutline> sittings = new ArrayList<>();
        for (int louderDb : new int[] {0, 2, -2}) {
            sittings.add(SittingOutline.of(
                    InventedSittings.of(sittings.size() + 1, InventedResults.result(1, louderDb), KNOWN)));
        }
        assertThat(BenchStudy.of(sittings).spread().orElseThrow().levelDb())
                .isCloseTo(Math.sqrt(2 * 2 - 0.3 * 0.3), within(1e-9));
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
