package io.github.tapwright.comparison;

import static io.github.tapwright.comparison.InventedSittings.BENCH;
import static io.github.tapwright.comparison.InventedSittings.KNOWN;
import static io.github.tapwright.comparison.InventedSittings.compare;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.InventedResults;
import io.github.tapwright.comparison.Difference.Verdict;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.Conditions;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SittingComparisonTest {

    @Test
    void theSameResultsDifferInNothing() {
        SittingComparison same = compare(1, KNOWN, KNOWN);

        assertThat(same.changes())
                .hasSize(3)
                .flatExtracting(ResonanceChange::differences)
                .allMatch(d -> d.verdict() == Verdict.CANNOT_TELL);
        assertThat(same.onlyFirst()).isEmpty();
        assertThat(same.onlySecond()).isEmpty();
        assertThat(same.comparability().troubles()).isEmpty();
    }

    @Test
    void twoPercentDifferAndAThirdOfAPercentDoesNot() {
        assertThat(compare(1.02, KNOWN, KNOWN).changes())
                .allMatch(c -> c.frequencyHz().verdict() == Verdict.DIFFERS);
        assertThat(compare(1.003, KNOWN, KNOWN).changes())
                .allMatch(c -> c.frequencyHz().verdict() == Verdict.CANNOT_TELL);
    }

    @Test
    void whatWouldDifferIfAskedAloneIsOnlyPerhapsSoAmongManyQuestions() {
        // 1.1 %: the assumed spread lends none of its endless degrees of freedom, and 1 % no longer convinces even
        // alone.
        SittingComparison comparison = compare(1.011, KNOWN, KNOWN);

        assertThat(comparison.questions())
                .as("three resonances, decay time counted with Q, one level 0 dB by definition")
                .isEqualTo(8);
        Difference air = comparison.changes().get(0).frequencyHz();
        Difference top = comparison.changes().get(1).frequencyHz();
        assertThat(top.probability()).isBetween(0.006, 0.05);
        assertThat(top.adjustedProbability())
                .as("the frequencies of main air and main top have four fifths of the 5 % between them")
                .isCloseTo(2 / 0.8 * Math.min(air.probability(), top.probability()), within(1e-12));
        assertThat(top.verdict()).isEqualTo(Verdict.DIFFERS_ALONE);
        assertThat(InWords.sentence("main top", top, SetUpSpread.USUAL))
                .startsWith("perhaps main top is 2.1 Hz higher")
                .contains("if it were the only question (p = 0.0", "asked at once (p = 0.");
    }

    /** The other six questions have a fifth of the 5 % between them: the surest of them, of weight 0.2/6, is multiplied by 30. */
    @Test
    void whatIsAskedBesideTheMainFrequenciesMustConvinceMore() {
        SittingComparison comparison = SittingComparison.of(
                InventedSittings.of(1, InventedResults.levels(-3, 0, -7), KNOWN),
                InventedSittings.of(2, InventedResults.levels(1, 0, -7), KNOWN),
                BENCH,
                Optional.empty());
        Difference level = comparison.changes().get(0).levelDb().orElseThrow();

        assertThat(level.probability()).isBetween(1e-3, 0.02);
        assertThat(level.adjustedProbability()).isCloseTo(6 / 0.2 * level.probability(), within(1e-12));
    }

    @Test
    void theResonanceThatServesAsZeroHasNoLevelToCompare() {
        assertThat(compare(1, KNOWN, KNOWN).changes())
                .extracting(c -> c.levelDb().isPresent())
                .containsExactly(true, false, true);
    }

    @Test
    void levelsAreComparedAgainstOneResonanceEvenWhereAnotherBecameTheStrongest() {
        SittingComparison comparison = SittingComparison.of(
                InventedSittings.of(1, InventedResults.levels(-3, 0, -7), KNOWN),
                InventedSittings.of(2, InventedResults.levels(0, -4, -11), KNOWN),
                BENCH,
                Optional.empty());

        assertThat(comparison.changes().get(1).levelDb()).isEmpty();
        Difference air = comparison.changes().get(0).levelDb().orElseThrow();
        assertThat(air.second().value()).isCloseTo(4, within(1e-12));
        assertThat(air.second().standardUncertainty()).isCloseTo(0.3 * Math.sqrt(2), within(1e-12));
        assertThat(air.estimate().value()).isCloseTo(7, within(1e-12));
        assertThat(comparison
                        .changes()
                        .get(2)
                        .levelDb()
                        .orElseThrow()
                        .estimate()
                        .value())
                .isCloseTo(0, within(1e-12));
    }

    @Test
    void whatHasNoPartnerStandsAlone() {
        SittingComparison nothing = SittingComparison.of(
                InventedSittings.of(1, InventedResults.result(1), KNOWN),
                InventedSittings.of(2, InventedResults.nothing(), KNOWN),
                BENCH,
                Optional.empty());

        assertThat(nothing.changes()).isEmpty();
        assertThat(nothing.onlyFirst()).hasSize(3);
    }

    @Test
    void theMakersNameIsTheOneShown() {
        assertThat(compare(1, KNOWN, KNOWN).changes())
                .extracting(c -> c.name().orElse(""))
                .contains("wolf near B flat");
    }

    @Test
    void coveringTheHoleRefusesEveryFigureUnlessTheMakerInsists() {
        Conditions covered = InventedSittings.conditions(HoleState.COVERED, StringState.DAMPED, 20, 43, "knob at 4");
        SittingComparison refused = compare(1.02, KNOWN, covered);
        assertThat(refused.questions()).isZero();
        assertThat(refused.changes())
                .flatExtracting(ResonanceChange::differences)
                .allMatch(d -> d.verdict() == Verdict.REFUSED);

        SittingComparison insisted = SittingComparison.of(
                InventedSittings.of(1, InventedResults.result(1), KNOWN),
                InventedSittings.of(2, InventedResults.result(1.02), covered),
                BENCH,
                Optional.of("to see what the air does"));
        assertThat(insisted.changes()).allMatch(c -> c.frequencyHz().verdict() == Verdict.DIFFERS);
        assertThat(insisted.comparability().despite()).contains("to see what the air does");
    }

    @Test
    void damperAirIsCorrectedForAndTheCorrectionBringsItsOwnUncertainty() {
        Conditions damper = InventedSittings.conditions(HoleState.OPEN, StringState.DAMPED, 20, 47, "knob at 4");
        double fall = Math.exp(4 * -0.00225);

        ResonanceChange top = compare(fall, KNOWN, damper).changes().get(1);

        assertThat(top.frequencyHz().asMeasured()).isCloseTo(187.13 * (fall - 1), within(1e-9));
        assertThat(top.frequencyHz().estimate().value()).isCloseTo(0, within(1e-9));
        assertThat(top.frequencyHz().correction().orElseThrow().parts())
                .singleElement()
                .satisfies(p -> assertThat(p.basis()).contains("not measured on this instrument"));
        // 4 points of an assumed slope of 0.115 %, and two readings of a hygrometer of 2 points
        double expected = 187.13 * Math.hypot(4 * 0.00115, Math.sqrt(2) * 2 * 0.00225);
        assertThat(top.frequencyHz().budget().components().stream()
                        .filter(c -> c.name().equals("humidity"))
                        .findFirst()
                        .orElseThrow()
                        .contribution())
                .isCloseTo(expected, within(0.02));
    }

    @Test
    void warmerAirRaisesTheMainAirAlone() {
        Conditions warmer = InventedSittings.conditions(HoleState.OPEN, StringState.DAMPED, 25, 43, "knob at 4");

        SittingComparison comparison = compare(1, KNOWN, warmer);

        // 0.6 of the speed of sound's share: c rises by 0.86 % from 20 to 25 °C
        assertThat(comparison.changes().get(0).frequencyHz().estimate().value())
                .isCloseTo(-98.42 * 0.6 * 0.0087, within(0.02));
        assertThat(comparison.changes().get(1).frequencyHz().correction()).isEmpty();
    }
}
