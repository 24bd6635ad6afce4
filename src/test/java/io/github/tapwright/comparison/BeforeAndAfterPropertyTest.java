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

/** Set-ups that scatter by 0.2 %, a bench studied with five of them, and an instrument before and after work on its top. */
class BeforeAndAfterPropertyTest {

    private static final int PAIRS = 500;
    private static final Instant NOON = Instant.parse("2026-03-14T12:00:00Z");

    private final Random chance = Chance.seeded(13);

    private Sitting sitting(int id, double top) {
        InventedBody body = new InventedBody(setUp(0.002), top * setUp(0.002), setUp(0.002), setUp(0.02));
        return body.sitting(id, "117", NOON, InventedBody.conditions(Stage.STRUNG, 45));
    }

    private double setUp(double share) {
        return 1 + share * chance.nextGaussian();
    }

    private SittingComparison pair(double top) {
        List<Sitting> study =
                IntStream.rangeClosed(1, 5).mapToObj(i -> sitting(i, 1)).toList();
        BenchKnowledge bench = new BenchKnowledge(
                BenchStudy.of(study.stream().map(SittingOutline::of).toList())
                        .spread()
                        .orElseThrow(),
                InventedSittings.BENCH.window(),
                InventedSittings.BENCH.sensitivity());
        return SittingComparison.of(sitting(6, 1), sitting(7, top), bench, Optional.empty());
    }

    private static long differing(SittingComparison comparison, boolean top) {
        return comparison.changes().stream()
                .filter(c -> c.name().equals(Optional.of(ModeName.MAIN_TOP.words())) == top)
                .filter(c -> c.frequencyHz().verdict() == Verdict.DIFFERS)
                .count();
    }

    @Test
    void aMainTopMovedByOneAndAThirdPercentIsFoundAndNothingElseIs() {
        long found = 0;
        long others = 0;
        for (int i = 0; i < PAIRS; i++) {
            SittingComparison comparison = pair(1.013);
            found += differing(comparison, true);
            others += differing(comparison, false);
        }
        assertThat(found).isGreaterThan(PAIRS * 97 / 100);
        assertThat(others).isLessThan(2 * PAIRS * 65 / 1000);
    }

    @Test
    void theSameInstrumentSetUpAgainShowsNothing() {
        long alarms = 0;
        for (int i = 0; i < PAIRS; i++) {
            SittingComparison comparison = pair(1);
            alarms += differing(comparison, true) + differing(comparison, false);
        }
        assertThat(alarms).isLessThan(3 * PAIRS * 65 / 1000);
    }
}
