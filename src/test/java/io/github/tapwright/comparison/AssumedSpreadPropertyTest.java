package io.github.tapwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.synthesis.Chance;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;

/** Sittings of three to eight strikes on a bench nobody has studied: what is assumed of setting up makes no answer surer. */
class AssumedSpreadPropertyTest {

    private static final int PAIRS = 2000;
    private static final Comparability FINE = new Comparability(List.of(), Optional.empty());
    private static final SetUpSpread NONE = SetUpSpread.given(0, 0, 0);

    private final Random chance = Chance.seeded(1946);

    /** The mean of three to eight strikes which scatter by up to 3 % of it. */
    private Estimate sitting(double truth) {
        int strikes = 3 + chance.nextInt(6);
        double scatter = 0.03 * chance.nextDouble() * truth;
        double squares = 0;
        for (int i = 1; i < strikes; i++) {
            squares += Math.pow(chance.nextGaussian(), 2);
        }
        double u = scatter * Math.sqrt(squares / (strikes - 1) / strikes);
        return new Estimate(truth + scatter / Math.sqrt(strikes) * chance.nextGaussian(), u, strikes - 1.0);
    }

    /** How many of so many pairs have a narrower interval with a spread than with none. */
    private int narrower(String what, SetUpSpread spread, BiFunction<SetUpSpread, Estimate[], Estimate> answer) {
        int narrower = 0;
        for (int i = 0; i < PAIRS; i++) {
            Estimate[] two = {sitting(187), sitting(190)};
            double without = answer.apply(NONE, two).halfWidth95();
            narrower += answer.apply(spread, two).halfWidth95() < without * (1 - 1e-12) ? 1 : 0;
        }
        System.out.printf("%s, narrower for the spread: %.1f %% of %d%n", what, 100.0 * narrower / PAIRS, PAIRS);
        return narrower;
    }

    private static Estimate difference(SetUpSpread spread, Estimate... two) {
        return Difference.between(Quantity.FREQUENCY, two[0], two[1], Optional.empty(), spread, FINE)
                .estimate();
    }

    private static Estimate overTime(SetUpSpread spread, Estimate... two) {
        BenchKnowledge bench =
                new BenchKnowledge(spread, InventedSittings.BENCH.window(), InventedSittings.BENCH.sensitivities());
        return new SittingFigure(new SittingId(1), Moment.at(Instant.EPOCH), two[0], Optional.empty(), Optional.empty())
                .inCommonAir(Subject.ofTaps().get(0), bench);
    }

    @Test
    void noIntervalOfADifferenceIsNarrowerForAnAssumption() {
        assertThat(narrower("difference", SetUpSpread.USUAL, AssumedSpreadPropertyTest::difference))
                .isZero();
        assertThat(narrower("difference, study lapsed", SetUpSpread.LAPSED, AssumedSpreadPropertyTest::difference))
                .isZero();
    }

    @Test
    void noBarOverTimeIsNarrowerForAnAssumption() {
        assertThat(narrower("over time", SetUpSpread.USUAL, AssumedSpreadPropertyTest::overTime))
                .isZero();
    }

    /** A study, or the maker's own word, is knowledge: beside it three strikes need not stand for the whole. */
    @Test
    void whatIsGivenMayMakeADifferenceSurer() {
        SetUpSpread said = SetUpSpread.given(0.003, 0.05, 1);

        assertThat(narrower("difference, spread given", said, AssumedSpreadPropertyTest::difference))
                .isPositive();
    }

    /** The price: strikes whose own scatter hardly matters widen by their number what the assumption brings. */
    @Test
    void whereTheBenchScattersAsAssumedTheIntervalHoldsTheDifference() {
        int held = 0;
        for (int i = 0; i < PAIRS; i++) {
            Estimate d = difference(SetUpSpread.USUAL, setUp(), setUp());
            held += d.differsFromZero() ? 0 : 1;
        }
        System.out.printf(
                "six strikes, bench as assumed, holds no difference: %.1f %% of %d%n", 100.0 * held / PAIRS, PAIRS);
        assertThat((double) held / PAIRS).isBetween(0.95, 0.99);
    }

    /** Six strikes that scatter by 0.05 %, set up on a bench that scatters by 0.3 %. */
    private Estimate setUp() {
        double own = 0.0005 * 187 / Math.sqrt(6);
        return new Estimate(187 * (1 + 0.003 * chance.nextGaussian()) + own * chance.nextGaussian(), own, 5);
    }
}
