package io.github.tapwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.comparison.Difference.Verdict;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.statistics.Estimate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DifferenceTest {

    private static final Comparability FINE = new Comparability(List.of(), Optional.empty());

    private static Difference between(Quantity quantity, Estimate a, Estimate b, SetUpSpread spread) {
        return Difference.between(quantity, a, b, Optional.empty(), spread, FINE);
    }

    @Test
    void everyUncertaintyAddsInSquares() {
        Difference d =
                between(Quantity.FREQUENCY, Estimate.of(100, 1), Estimate.of(110, 2), SetUpSpread.given(0.04, 0, 0));

        assertThat(d.estimate().value()).isEqualTo(10);
        assertThat(d.estimate().standardUncertainty()).isCloseTo(Math.sqrt(1 + 4 + 16 + 4.4 * 4.4), within(1e-12));
    }

    @Test
    void fewStrikesWidenTheIntervalByStudentsFactor() {
        SetUpSpread none = SetUpSpread.given(0, 0, 0);
        Difference many = between(Quantity.FREQUENCY, Estimate.of(100, 1), Estimate.of(102.5, 0.1), none);
        Difference few = between(Quantity.FREQUENCY, new Estimate(100, 1, 4), new Estimate(102.5, 0.1, 4), none);

        assertThat(many.verdict()).isEqualTo(Verdict.DIFFERS);
        assertThat(few.verdict()).isEqualTo(Verdict.CANNOT_TELL);
    }

    /** A study of three set-ups has two degrees of freedom; a part counted as perfectly known would lend it some of its own. */
    @Test
    void aCorrectionThatIsAssumedNeverMakesADifferenceSurer() {
        Estimate a = new Estimate(190, 0.3, 2);
        Estimate b = new Estimate(192, 0.01, 2);
        SetUpSpread none = SetUpSpread.given(0, 0, 0);
        Correction assumed = new Correction(List.of(new Correction.Part("humidity", Estimate.of(0, 0.2), "assumed")));
        Difference alone = between(Quantity.FREQUENCY, a, b, none);
        Difference corrected = Difference.between(Quantity.FREQUENCY, a, b, Optional.of(assumed), none, FINE);

        assertThat(corrected.interval95().width())
                .isGreaterThan(alone.interval95().width());
        assertThat(corrected.probability()).isGreaterThan(alone.probability());
        assertThat(corrected.adjustedProbability()).isEqualTo(corrected.probability());
        assertThat(corrected.budget().combined().interval95().width())
                .as("what Welch and Satterthwaite alone would make of it")
                .isLessThan(alone.interval95().width());
    }

    @Test
    void theSentenceSaysHowMuchHowSureAndWhetherItIsHeard() {
        Difference heard = between(
                Quantity.FREQUENCY, Estimate.of(192, 0.1), Estimate.of(199, 0.1), SetUpSpread.given(0.002, 0, 0));
        assertThat(InWords.sentence("main top", heard, SetUpSpread.USUAL))
                .isEqualTo(
                        "main top is 7.0 Hz higher (5.9 to 8.1): more than fits, strikes and setting up again explain"
                                + " (assumed, not measured on this bench); about 3.6 %, above what listeners notice in published"
                                + " tests");
        Difference small = between(
                Quantity.FREQUENCY, Estimate.of(192, 0.01), Estimate.of(191, 0.01), SetUpSpread.given(0.0005, 0, 0));
        assertThat(InWords.sentence("main top", small, SetUpSpread.USUAL))
                .startsWith("main top is 1.00 Hz lower (0.73 to 1.27)")
                .contains("about 0.5 %, below what listeners notice");
        Difference none = between(
                Quantity.DECAY_TIME, Estimate.of(0.4, 0.01), Estimate.of(0.41, 0.01), SetUpSpread.given(0, 0.05, 0));
        assertThat(InWords.sentence("main air", none, SetUpSpread.USUAL))
                .contains("main air, decay time: cannot tell, the difference may be anything from −0.05")
                .endsWith(" s");
    }

    @Test
    void louderAndLongerHaveTheirOwnVerbs() {
        Difference louder = between(Quantity.LEVEL, Estimate.of(-3, 0.1), Estimate.of(1, 0.1), SetUpSpread.USUAL);
        assertThat(InWords.sentence("string 5", louder, SetUpSpread.USUAL))
                .contains("is 4.0 dB louder", "above what listeners notice");
        Difference shorter =
                between(Quantity.DECAY_TIME, Estimate.of(4, 0.01), Estimate.of(2, 0.01), SetUpSpread.USUAL);
        assertThat(InWords.sentence("string 5", shorter, SetUpSpread.USUAL)).contains("s shorter");
        Difference q = between(Quantity.Q, Estimate.of(20, 0.01), Estimate.of(40, 0.01), SetUpSpread.USUAL);
        assertThat(InWords.sentence("main back", q, SetUpSpread.USUAL)).contains("has a Q 20", "greater");
    }

    @Test
    void aDifferenceThatMayBeHeardOrNotSaysSo() {
        Difference d = between(
                Quantity.FREQUENCY, Estimate.of(200, 0.2), Estimate.of(202, 0.2), SetUpSpread.given(0.001, 0, 0));
        assertThat(d.audibility()).isEqualTo(Audibility.CANNOT_TELL);
    }

    @Test
    void aSpreadThatWouldHideEverythingIsRefused() {
        assertThatExceptionOfType(RefusedEntryException.class).isThrownBy(() -> SetUpSpread.given(0.2, 0.05, 1));
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> SetUpSpread.given(0.003, Double.NaN, 1));
        assertThatExceptionOfType(RefusedEntryException.class).isThrownBy(() -> SetUpSpread.given(0.003, 0.05, -1));
    }
}
