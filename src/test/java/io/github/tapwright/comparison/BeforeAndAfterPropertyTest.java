package io.github.tapwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.comparison.Difference.Verdict;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.synthesis.Chance;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Set-ups that scatter by 0.2 %, a bench studied with five of them, and an instrument before and after work on its top. */
class BeforeAndAfterPropertyTest {

    private static final int PAIRS = 500;
    private static final Instant NOON = Instant.parse("2026-03-14T12:00:00Z");

    private final Random chance = Chance.seeded(13);

    private Sitting sitting(int id, double top) {
        return sitting(id, new InventedBody(setUp(0.002), top * setUp(0.002), setUp(0.002), setUp(0.02)));
    }

    /** A support that grips a little harder moves all of them alike. */
    private Sitting movedTogether(int id) {
        double all = setUp(0.002);
        return sitting(id, new InventedBody(all, all, all, setUp(0.02)));
    }

    private static Sitting sitting(int id, InventedBody body) {
        return body.sitting(id, "117", NOON, InventedBody.conditions(Stage.STRUNG, 45));
    }

    private double setUp(double share) {
        return 1 + share * chance.nextGaussian();
    }

    private SittingComparison pair(double top) {
        List<Sitting> study =
                IntStream.rangeClosed(1, 5).mapToObj(i -> sitting(i, 1)).toList();
        return compared(study, sitting(6, 1), sitting(7, top));
    }

    private static SittingComparison compared(List<Sitting> study, Sitting first, Sitting second) {
        BenchKnowledge bench = new BenchKnowledge(
                BenchStudy.of(study.stream().map(SittingOutline::of).toList())
                        .spread()
                        .orElseThrow(),
                InventedSittings.BENCH.window(),
                InventedSittings.BENCH.sensitivities());
        return SittingComparison.of(first, second, bench, Optional.empty());
    }

    /** Frequencies that differ, each question asked alone. */
    private static long differing(SittingComparison comparison, boolean top) {
        return comparison.changes().stream()
                .filter(c -> c.name().equals(Optional.of(ModeName.MAIN_TOP.words())) == top)
                .filter(c -> c.frequencyHz().estimate().differsFromZero())
                .count();
    }

    /** Whether anything but the top's frequency is said to differ, all questions considered. */
    private static boolean saysAnythingElse(SittingComparison comparison) {
        return comparison.changes().stream()
                .flatMap(c -> c.differences().stream()
                        .filter(d -> d.quantity() != Quantity.FREQUENCY
                                || !c.name().equals(Optional.of(ModeName.MAIN_TOP.words()))))
                .anyMatch(d -> d.verdict() == Verdict.DIFFERS);
    }

    @Test
    void aMainTopMovedByOneAndAThirdPercentIsFoundAndNothingElseIs() {
        long found = 0;
        long others = 0;
        long claims = 0;
        long certain = 0;
        for (int i = 0; i < PAIRS; i++) {
            SittingComparison comparison = pair(1.013);
            found += differing(comparison, true);
            others += differing(comparison, false);
            claims += saysAnythingElse(comparison) ? 1 : 0;
            certain += comparison.changes().get(1).frequencyHz().verdict() == Verdict.DIFFERS ? 1 : 0;
        }
        // Five set-ups tell the bench's scatter with four degrees of freedom: t is 2.78, and 1.3 % is 4.6 standard
        // uncertainties.
        assertThat(found).isGreaterThan(PAIRS * 90 / 100);
        // Among three main frequencies, four fifths of the 5 % between them, t is 4.2.
        assertThat(certain).as("found, all questions considered").isGreaterThan(PAIRS * 60 / 100);
        assertThat(others).isLessThan(2 * PAIRS * 65 / 1000);
        assertThat(claims).as("whole comparisons that claim something else").isLessThan(PAIRS * 65 / 1000);
    }

    @Test
    void theSameInstrumentSetUpAgainShowsNothing() {
        long alarms = 0;
        long claims = 0;
        for (int i = 0; i < PAIRS; i++) {
            SittingComparison comparison = pair(1);
            alarms += differing(comparison, true) + differing(comparison, false);
            claims += comparison.changes().stream()
                            .flatMap(c -> c.differences().stream())
                            .anyMatch(d -> d.verdict() == Verdict.DIFFERS)
                    ? 1
                    : 0;
        }
        assertThat(alarms).as("frequencies that differ if asked alone").isLessThan(3 * PAIRS * 65 / 1000);
        assertThat(claims).as("whole comparisons that claim a difference").isLessThan(PAIRS * 65 / 1000);
    }

    /** Three resonances that move together tell no more of the bench than one of them does. */
    @ParameterizedTest
    @ValueSource(ints = {3, 5})
    void aSetUpThatMovesAllResonancesAlikeRaisesNoMoreAlarmsThanItMay(int setUps) {
        long alarms = 0;
        for (int i = 0; i < 3 * PAIRS; i++) {
            List<Sitting> study = IntStream.rangeClosed(1, setUps)
                    .mapToObj(this::movedTogether)
                    .toList();
            alarms += differing(compared(study, movedTogether(6), movedTogether(7)), true);
        }
        assertThat(alarms).isBetween(3L * PAIRS * 33 / 1000, 3L * PAIRS * 67 / 1000);
    }
}
