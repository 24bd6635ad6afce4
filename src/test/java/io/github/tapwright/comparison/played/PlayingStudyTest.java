package io.github.tapwright.comparison.played;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.comparison.Comparability;
import io.github.tapwright.comparison.KnownScatter;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.SetUpSpread.Basis;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.synthesis.Chance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PlayingStudyTest {

    private static final Comparability FINE = new Comparability(List.of(), Optional.empty());

    private final Random chance = Chance.seeded(44);

    /** One string, plucked as loud as said, dB. */
    private static PluckRun plucks(double... db) {
        List<Pluck> plucks = new ArrayList<>();
        for (double level : db) {
            plucks.add(pluck(1, level));
        }
        return run(plucks);
    }

    private static Pluck pluck(int string, double db) {
        return new Pluck(0, 0, Optional.of(string), Optional.of(db), Optional.empty(), Optional.empty(), List.of());
    }

    private static PluckRun run(List<Pluck> plucks) {
        return new PluckRun(plucks, Tuning.CLASSICAL, Optional.empty(), "plucks-test");
    }

    private static PlayedScatter level(PluckRun... runs) {
        return PlayedScatter.of(
                PlayedQuantity.LEVEL,
                SittingMeans.ofPlucks(PlayedQuantity.LEVEL, Arrays.asList(runs)).orElseThrow());
    }

    /** Means −2, 0 and 2 dB: s_R² = 4; two plucks 1 dB apart, s² = 0.5 and s_r² = 0.25 of their mean. */
    @Test
    void whatThePlucksExplainIsTakenOff() {
        PlayedScatter found = level(plucks(-2.5, -1.5), plucks(-0.5, 0.5), plucks(1.5, 2.5));

        assertThat(found.scatter().reproducibility()).isCloseTo(2, within(1e-12));
        assertThat(found.scatter().withinSetUp()).isCloseTo(0.5, within(1e-12));
        assertThat(found.counted()).isEqualTo(new KnownScatter(Math.sqrt(3.75), 2, Basis.STUDIED));
        assertThat(found.isMostlyWithin()).isFalse();
        assertThat(found.figures()).isEqualTo(2);
    }

    /** Means −0.5, 0 and 0.5 dB of plucks 2 dB apart: s_R² = 0.25 is less than s_r² = 1. */
    @Test
    void aLuckyStudyStillCountsHalfOfWhatItSaw() {
        PlayedScatter found = level(plucks(-1.5, 0.5), plucks(-1, 1), plucks(-0.5, 1.5));

        assertThat(found.scatter().betweenSetUps()).isZero();
        assertThat(found.isMostlyWithin()).isTrue();
        assertThat(found.counted().deviation()).isCloseTo(Math.sqrt(0.125), within(1e-12));
        assertThat(found.reproducibility95().upper()).isGreaterThan(1);
    }

    @Test
    void onlyStringsThatEverySittingPluckedTwiceCount() {
        PluckRun more = run(List.of(pluck(1, -2.5), pluck(1, -1.5), pluck(2, 9), pluck(2, 9)));
        PluckRun once = run(List.of(pluck(1, -0.5), pluck(1, 0.5), pluck(2, -9)));

        assertThat(level(more, once, plucks(1.5, 2.5)).strings()).isEqualTo(1);
        assertThat(SittingMeans.ofPlucks(PlayedQuantity.LEVEL, List.of(run(List.of(pluck(2, 9))), once, plucks(1, 2))))
                .isEmpty();
    }

    /** Places differ by far more than sittings: what a place has in every sitting is no scatter. */
    @Test
    void onlyPlacesOfEverySittingCountAndWhatTheyAreIsNoScatter() {
        List<Fret> missing = InventedRun.SIX_STRINGS.subList(1, InventedRun.SIX_STRINGS.size());
        InventedRun steady = new InventedRun(1, 0, 0, 0, List.of());
        InventedRun longer = new InventedRun(Math.exp(0.1), 0, 0, 0, List.of());
        List<Fingerboard> runs = List.of(
                steady.played(InventedRun.SIX_STRINGS, chance),
                steady.played(missing, chance),
                longer.played(InventedRun.SIX_STRINGS, chance));

        SittingMeans means =
                SittingMeans.ofNotes(PlayedQuantity.EARLY_DECAY, runs).orElseThrow();

        assertThat(means.figures()).isEqualTo(77);
        assertThat(means.strings()).isEqualTo(6);
        assertThat(means.means())
                .allSatisfy(m -> assertThat(m.standardUncertainty()).isCloseTo(0, within(1e-9)));
        assertThat(means.means().get(2).value() - means.means().get(0).value()).isCloseTo(0.1, within(1e-9));
    }

    /** The mean over all strings of a study is the one a comparison takes, so that its scatter is the one in question. */
    @Test
    void theMeansDifferByWhatAComparisonSays() {
        Fingerboard a = InventedRun.of(1, 0).played(InventedRun.SIX_STRINGS, chance);
        Fingerboard b = InventedRun.of(1.1, 1).played(InventedRun.SIX_STRINGS, chance);

        List<Estimate> means = SittingMeans.ofNotes(PlayedQuantity.LEVEL, List.of(a, b))
                .orElseThrow()
                .means();
        Estimate notes = NotePairs.of(PlayedQuantity.LEVEL, a, b).overall().orElseThrow();

        assertThat(means.get(1).value() - means.get(0).value()).isCloseTo(notes.value(), within(1e-9));
        assertThat(Math.sqrt(2) * means.get(0).standardUncertainty())
                .isCloseTo(notes.standardUncertainty(), within(1e-9));
    }

    @Test
    void whatAStudyLacksIsAssumedAndSaysSo() {
        PlayingSpread spread = new PlayingSpread(
                SetUpSpread.USUAL, Map.of(PlayedQuantity.EARLY_DECAY, new KnownScatter(0.02, 4, Basis.STUDIED)));
        Fingerboard run = InventedRun.of(1, 0).played(InventedRun.SIX_STRINGS, chance);
        PlayedComparison found = PlayedComparison.ofNotes(
                run, InventedRun.of(3, 9).played(InventedRun.SIX_STRINGS, chance), spread, FINE);

        assertThat(found.changes().stream().map(PlayedWords::sentence).toList())
                .satisfies(s -> assertThat(s.get(0)).contains("(measured on this bench)"))
                .satisfies(s -> assertThat(s.get(1)).contains("(assumed, not measured on this bench)"))
                .satisfies(s -> assertThat(s.get(2)).contains("(assumed, not measured on this bench)"));
        assertThat(found.changes().get(0).estimate().orElseThrow().degreesOfFreedom())
                .as("no more than the study has")
                .isEqualTo(4);
        assertThat(PlayedWords.again(found.changes()))
                .isEqualTo("early decays by 2 % (measured on this bench); decay times by 5 % and levels by 1 dB"
                        + " (assumed, not measured on this bench)");
        assertThat(PlayedWords.again(PlayedComparison.ofNotes(run, run, PlayingSpread.of(SetUpSpread.USUAL), FINE)
                        .changes()))
                .isEqualTo("decay times by 5 % and levels by 1 dB (assumed, not measured on this bench)");
    }
}
