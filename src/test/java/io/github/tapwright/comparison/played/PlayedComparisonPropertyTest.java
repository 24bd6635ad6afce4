package io.github.tapwright.comparison.played;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.comparison.Comparability;
import io.github.tapwright.comparison.Difference.Verdict;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.statistics.Estimate;
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
        System.out.printf("intervals hold early decay, level: %d, %d of %d%n", early, level, PAIRS);
        assertThat(early).isBetween(PAIRS * 93 / 100, PAIRS * 97 / 100);
        assertThat(level).isBetween(PAIRS * 93 / 100, PAIRS * 97 / 100);
    }

    @Test
    void theSameGuitarPlayedAgainShowsNothing() {
        long claims = 0;
        for (int i = 0; i < PAIRS; i++) {
            claims += pair(1).changes().stream().anyMatch(c -> c.verdict() == Verdict.DIFFERS) ? 1 : 0;
        }
        System.out.printf("the same guitar played again, claims: %d of %d%n", claims, PAIRS);
        assertThat(claims).as("whole comparisons that claim a difference").isLessThan(PAIRS * 65 / 1000);
    }

    @Test
    void notesThatRingAThirdLongerAreFound() {
        long found = 0;
        for (int i = 0; i < PAIRS; i++) {
            found += pair(1.33).changes().get(0).verdict() == Verdict.DIFFERS ? 1 : 0;
        }
        System.out.printf("a third longer, found: %d of %d%n", found, PAIRS);
        assertThat(found).isGreaterThan(PAIRS * 85 / 100);
    }

    /** Two to four plucks of one string that scatter by up to 5 dB, on a bench nobody has studied. */
    @Test
    void whatIsAssumedOfPlayingAgainMakesNoAnswerSurer() {
        int narrower = 0;
        for (int i = 0; i < PAIRS; i++) {
            int freedom = 1 + chance.nextInt(3);
            Estimate plucks = new Estimate(chance.nextGaussian(), 5 * chance.nextDouble(), freedom);
            narrower += overall(plucks, SetUpSpread.USUAL).halfWidth95()
                            < overall(plucks, SetUpSpread.given(0, 0, 0)).halfWidth95() * (1 - 1e-12)
                    ? 1
                    : 0;
        }
        System.out.printf("levels narrower for what is assumed of playing again: %d of %d%n", narrower, PAIRS);
        assertThat(narrower).isZero();
    }

    private static Estimate overall(Estimate plucks, SetUpSpread spread) {
        return PlayedChange.of(PlayedQuantity.LEVEL, List.of(), List.of(), Optional.of(plucks), spread.level(), FINE)
                .estimate()
                .orElseThrow();
    }
}
