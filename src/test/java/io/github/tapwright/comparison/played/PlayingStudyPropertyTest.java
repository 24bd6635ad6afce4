package io.github.tapwright.comparison.played;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.BenchKnowledge;
import io.github.tapwright.comparison.Comparability;
import io.github.tapwright.comparison.Difference.Verdict;
import io.github.tapwright.comparison.HumiditySensitivities;
import io.github.tapwright.comparison.InventedBody;
import io.github.tapwright.comparison.KnownScatter;
import io.github.tapwright.comparison.PluckSittings;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.synthesis.Chance;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One guitar played again and again: single notes scatter by 10 % and 1 dB, plucks by 0.8 dB, sittings by as much as each test says. */
class PlayingStudyPropertyTest {

    private static final int WORLDS = 400;
    private static final double WITHIN = 0.1 / Math.sqrt(78);
    /** Of six strings, each 1 dB softer than the one before. */
    private static final double TRUE_LEVEL_DB = -32.5;

    private static final Comparability FINE = new Comparability(List.of(), Optional.empty());
    private static final List<PlayedQuantity> OF_NOTES =
            List.of(PlayedQuantity.EARLY_DECAY, PlayedQuantity.DECAY_TIME, PlayedQuantity.LEVEL);

    private final Random chance = Chance.seeded(43);

    /** A sitting of notes whose decays scatter by a share and levels by ten times as many dB from sitting to sitting. */
    private Fingerboard notes(double spread) {
        return InventedRun.of(Math.exp(spread * chance.nextGaussian()), 10 * spread * chance.nextGaussian())
                .played(InventedRun.SIX_STRINGS, chance);
    }

    /** Five plucks on each of six strings. */
    private PluckRun plucks(double spreadDb) {
        return plucks(spreadDb, 30);
    }

    private PluckRun plucks(double spreadDb, int count) {
        double again = spreadDb * chance.nextGaussian();
        List<Pluck> plucks = IntStream.range(0, count)
                .mapToObj(i -> {
                    double db = again - i % 6 + 0.8 * chance.nextGaussian();
                    return new Pluck(
                            0,
                            i,
                            Optional.of(1 + i % 6),
                            Optional.of(-30 + db),
                            Optional.of(-40 + db),
                            Optional.empty(),
                            List.of());
                })
                .toList();
        return new PluckRun(plucks, Tuning.CLASSICAL, Optional.empty(), "plucks-test");
    }

    private PlayedScatter earlyDecay(int sittings, double spread) {
        List<Fingerboard> runs =
                Stream.generate(() -> notes(spread)).limit(sittings).toList();
        return scatter(PlayedQuantity.EARLY_DECAY, runs);
    }

    private static PlayedScatter scatter(PlayedQuantity quantity, List<Fingerboard> runs) {
        return PlayedScatter.of(quantity, SittingMeans.ofNotes(quantity, runs).orElseThrow());
    }

    private PlayingSpread studyOfNotes(int sittings, double spread) {
        List<Fingerboard> runs =
                Stream.generate(() -> notes(spread)).limit(sittings).toList();
        Map<PlayedQuantity, KnownScatter> known = new EnumMap<>(PlayedQuantity.class);
        OF_NOTES.forEach(q -> known.put(q, scatter(q, runs).counted()));
        return new PlayingSpread(SetUpSpread.USUAL, known);
    }

    private PlayingSpread studyOfPlucks(int sittings, double spreadDb) {
        List<PluckRun> runs =
                Stream.generate(() -> plucks(spreadDb)).limit(sittings).toList();
        Map<PlayedQuantity, KnownScatter> known = new EnumMap<>(PlayedQuantity.class);
        Stream.of(PlayedQuantity.LEVEL, PlayedQuantity.LOUDNESS)
                .forEach(q -> known.put(
                        q,
                        PlayedScatter.of(q, SittingMeans.ofPlucks(q, runs).orElseThrow())
                                .counted()));
        return new PlayingSpread(SetUpSpread.USUAL, known);
    }

    @Test
    void theTrueScatterIsRecovered() {
        double between = 0.03;
        double whole = Math.hypot(between, WITHIN);
        int held = 0;
        double withinSquares = 0;
        double againSquares = 0;
        for (int i = 0; i < WORLDS; i++) {
            PlayedScatter found = earlyDecay(5, between);
            held += found.reproducibility95().contains(whole) ? 1 : 0;
            double within = Math.pow(found.scatter().withinSetUp(), 2);
            withinSquares += within;
            againSquares += Math.pow(found.scatter().reproducibility(), 2) - within;
        }
        assertThat(held).as("chi-square intervals of s_R").isBetween(WORLDS * 93 / 100, WORLDS * 97 / 100);
        assertThat(Math.sqrt(withinSquares / WORLDS)).isCloseTo(WITHIN, within(0.02 * WITHIN));
        assertThat(Math.sqrt(againSquares / WORLDS)).isCloseTo(between, within(0.05 * between));
    }

    /** From nothing that playing again adds to far more than the notes leave unsure. */
    @ParameterizedTest
    @CsvSource({"3, 0.03", "5, 0", "5, 0.0113", "5, 0.03"})
    void intervalsHoldTheTruthAndTheSameGuitarShowsNothing(int sittings, double spread) {
        int early = 0;
        int level = 0;
        int claims = 0;
        for (int i = 0; i < WORLDS; i++) {
            PlayedComparison found =
                    PlayedComparison.ofNotes(notes(spread), notes(spread), studyOfNotes(sittings, spread), FINE);
            early += found.changes().get(0).interval95().orElseThrow().contains(0) ? 1 : 0;
            level += found.changes().get(2).interval95().orElseThrow().contains(0) ? 1 : 0;
            claims += found.changes().stream().anyMatch(c -> c.verdict() == Verdict.DIFFERS) ? 1 : 0;
        }
        assertThat(early).as("early decay").isGreaterThan(WORLDS * 94 / 100);
        assertThat(level).as("level").isGreaterThan(WORLDS * 94 / 100);
        assertThat(claims).as("whole comparisons that claim a difference").isLessThan(WORLDS * 6 / 100);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.15, 0.6})
    void levelsOfPlucksHoldTheTruthToo(double spreadDb) {
        int held = 0;
        int claims = 0;
        for (int i = 0; i < WORLDS; i++) {
            PlayedComparison found =
                    PlayedComparison.ofPlucks(plucks(spreadDb), plucks(spreadDb), studyOfPlucks(5, spreadDb), FINE);
            held += found.changes().get(0).interval95().orElseThrow().contains(0) ? 1 : 0;
            claims += found.changes().stream().anyMatch(c -> c.verdict() == Verdict.DIFFERS) ? 1 : 0;
        }
        assertThat(held).isGreaterThan(WORLDS * 94 / 100);
        assertThat(claims).isLessThan(WORLDS * 6 / 100);
    }

    /** Over time a sitting of two plucks a string stands beside a study of five a string, and its bar must be the longer for it. */
    @ParameterizedTest
    @CsvSource({"0, 12", "0.15, 12", "0.6, 12", "0.15, 30", "0.15, 120"})
    void barsOfASittingHoldItsTrueLevelHoweverManyPlucksItHas(double spreadDb, int count) {
        int held = 0;
        for (int i = 0; i < WORLDS; i++) {
            BenchKnowledge bench = new BenchKnowledge(
                    SetUpSpread.USUAL,
                    studyOfPlucks(5, spreadDb).of(PlayedQuantity.LEVEL),
                    ShopWindow.USUAL,
                    HumiditySensitivities.ASSUMED);
            SittingOutline sitting = SittingOutline.of(InventedBody.of(
                    1,
                    "117",
                    Instant.EPOCH,
                    InventedBody.conditions(Stage.LATER, 45),
                    new Findings.OfPlucks(calibrated(plucks(spreadDb, count)))));
            SittingFigure level =
                    PluckSittings.among(List.of(sitting)).figure(sitting).orElseThrow();
            held += level.inCommonAir(Subject.PLUCKS, bench).interval95().contains(TRUE_LEVEL_DB) ? 1 : 0;
        }
        assertThat(held).isGreaterThan(WORLDS * 94 / 100);
    }

    private static PluckRun calibrated(PluckRun run) {
        return new PluckRun(run.plucks(), run.tuning(), Optional.of(new CalibrationId(1)), run.methodVersion());
    }

    /** What a study is for: a player steadier than is assumed tells 10 % apart, which the assumed 5 % hide. */
    @Test
    void aSteadyPlayersStudyFindsWhatAssumedFiguresHide() {
        int studied = 0;
        int assumed = 0;
        for (int i = 0; i < WORLDS; i++) {
            Fingerboard before = notes(0.01);
            Fingerboard after = InventedRun.of(1.1 * Math.exp(0.01 * chance.nextGaussian()), 0)
                    .played(InventedRun.SIX_STRINGS, chance);
            studied += differs(before, after, studyOfNotes(5, 0.01));
            assumed += differs(before, after, PlayingSpread.of(SetUpSpread.USUAL));
        }
        assertThat(studied).isGreaterThan(WORLDS / 2);
        assertThat(assumed).isLessThan(WORLDS / 20);
    }

    private static int differs(Fingerboard before, Fingerboard after, PlayingSpread spread) {
        return PlayedComparison.ofNotes(before, after, spread, FINE)
                                .changes()
                                .get(0)
                                .verdict()
                        == Verdict.DIFFERS
                ? 1
                : 0;
    }
}
