package io.github.tapwright.comparison.played;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.comparison.Comparability;
import io.github.tapwright.comparison.Difference.Verdict;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.synthesis.Chance;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Runs whose single notes scatter by 10 % and 1 dB, on days that move all decays by 5 % and all levels by 1 dB. */
class PlayedComparisonPropertyTest {

    private static final int PAIRS = 1000;
    private static final Comparability FINE = new Comparability(List.of(), Optional.empty());

    private final Random chance = Chance.seeded(42);

    private PlayedComparison pair(double longer) {
        return PlayedComparison.ofNotes(
                onSomeDay(1).played(InventedRun.SIX_STRINGS, chance),
                onSomeDay(longer).played(InventedRun.SIX_STRINGS, chance),
                PlayingSpread.of(SetUpSpread.USUAL),
                FINE);
    }

    private InventedRun onSomeDay(double longer) {
        return InventedRun.of(longer * Math.exp(0.05 * chance.nextGaussian()), chance.nextGaussian());
    }

    @Test
    void intervalsHoldTheTruthNineteenTimesOfTwenty() {
        int early = 0;
        int level = 0;
        for (int i = 0; i < PAIRS; i++) {
            PlayedComparison comparison = pair(1.2);
            early += comparison.changes().get(0).interval95().orElseThrow().contains(20) ? 1 : 0;
            level += comparison.changes().get(2).interval95().orElseThrow().contains(0) ? 1 : 0;
        }
        assertThat(early).isBetween(PAIRS * 93 / 100, PAIRS * 97 / 100);
        assertThat(level).isBetween(PAIRS * 93 / 100, PAIRS * 97 / 100);
    }

    @Test
    void theSameGuitarPlayedAgainShowsNothing() {
        long claims = 0;
        for (int i = 0; i < PAIRS; i++) {
            claims += pair(1).changes().stream().anyMatch(c -> c.verdict() == Verdict.DIFFERS) ? 1 : 0;
        }
        assertThat(claims).as("whole comparisons that claim a difference").isLessThan(PAIRS * 65 / 1000);
    }

    @Test
    void notesThatRingAThirdLongerAreFound() {
        long found = 0;
        for (int i = 0; i < PAIRS; i++) {
            found += pair(1.33).changes().get(0).verdict() == Verdict.DIFFERS ? 1 : 0;
        }
        assertThat(found).isGreaterThan(PAIRS * 85 / 100);
    }
}
