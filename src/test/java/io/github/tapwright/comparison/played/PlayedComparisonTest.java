package io.github.tapwright.comparison.played;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.comparison.Comparability;
import io.github.tapwright.comparison.Difference.Verdict;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.synthesis.Chance;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PlayedComparisonTest {

    private static final Comparability FINE = new Comparability(List.of(), Optional.empty());

    private final Random chance = Chance.seeded(41);

    private Fingerboard run(InventedRun of) {
        return of.played(InventedRun.SIX_STRINGS, chance);
    }

    private static PlayedComparison compare(Fingerboard a, Fingerboard b, SetUpSpread spread) {
        return PlayedComparison.ofNotes(a, b, PlayingSpread.of(spread), FINE);
    }

    private static PlayedChange change(PlayedComparison comparison, PlayedQuantity quantity) {
        return comparison.changes().stream()
                .filter(c -> c.quantity() == quantity)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void notesThatRingHalfAsLongAgainAreFoundToByStringAndOverAll() {
        PlayedComparison found = compare(run(InventedRun.of(1, 0)), run(InventedRun.of(1.5, 0)), SetUpSpread.USUAL);

        PlayedChange early = change(found, PlayedQuantity.EARLY_DECAY);
        assertThat(early.verdict()).isEqualTo(Verdict.DIFFERS);
        assertThat(early.strings()).hasSize(6).allSatisfy(s -> {
            assertThat(s.firstCount()).isEqualTo(13);
            assertThat(s.difference().orElseThrow().interval95().contains(Math.log(1.5)))
                    .isTrue();
        });
        assertThat(PlayedWords.sentence(early))
                .startsWith("the early decay of notes is ")
                .contains("% longer (", "assumed, not measured on this bench");
        assertThat(change(found, PlayedQuantity.LEVEL).verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(found.questions())
                .as("the player tunes: no question of pitch")
                .isEqualTo(3);
    }

    @Test
    void theUncertaintyIsThePooledScatterAndSettingUpTwice() {
        List<Fret> places =
                List.of(new Fret(1, 0), new Fret(1, 1), new Fret(1, 2), new Fret(2, 0), new Fret(2, 1), new Fret(2, 2));
        Fingerboard a = new InventedRun(1, 0, 0, 1, List.of()).played(places, chance);
        Fingerboard b = new InventedRun(1, 0, 0, 1, List.of()).played(places, chance);
        double[] d = IntStream.range(0, 6)
                .mapToDouble(i -> b.notes().get(i).lafMaxDb().found().orElseThrow()
                        - a.notes().get(i).lafMaxDb().found().orElseThrow())
                .toArray();
        double m1 = (d[0] + d[1] + d[2]) / 3;
        double m2 = (d[3] + d[4] + d[5]) / 3;
        double squares = 0;
        for (int i = 0; i < 6; i++) {
            squares += Math.pow(d[i] - (i < 3 ? m1 : m2), 2);
        }
        double variance = squares / 4;

        PlayedChange level = change(compare(a, b, SetUpSpread.given(0, 0, 0.5)), PlayedQuantity.LEVEL);

        assertThat(level.estimate().orElseThrow().value()).isCloseTo((m1 + m2) / 2, within(1e-12));
        assertThat(level.estimate().orElseThrow().standardUncertainty())
                .isCloseTo(Math.sqrt(variance / 6 + 2 * 0.25), within(1e-12));
        assertThat(level.strings().get(0).difference().orElseThrow().standardUncertainty())
                .isCloseTo(Math.sqrt(variance / 3), within(1e-12));
    }

    @Test
    void deadNotesThatStayedWentOrCameAreNamed() {
        Fret stayed = new Fret(2, 5);
        Fret went = new Fret(3, 6);
        Fret came = new Fret(4, 7);
        Fret notPlayed = new Fret(6, 4);
        Fingerboard a = run(new InventedRun(1, 0, 0.03, 1, List.of(stayed, went, notPlayed)));
        Fingerboard b = new InventedRun(1, 0, 0.03, 1, List.of(stayed, came))
                .played(
                        InventedRun.SIX_STRINGS.stream()
                                .filter(p -> !p.equals(notPlayed))
                                .toList(),
                        chance);

        assertThat(compare(a, b, SetUpSpread.USUAL).fastNotes())
                .extracting(FastNote::words)
                .containsExactly(
                        "string 6, fret 4: died away fast in A, not played or not to be judged in B",
                        "string 4, fret 7: dies away fast in B, rings as its neighbours do in A",
                        "string 3, fret 6: died away fast in A, rings as its neighbours do in B",
                        "string 2, fret 5: dies away fast in both");
    }

    @Test
    void twoNotesTellNothingAndSaySo() {
        List<Fret> two = List.of(new Fret(1, 0), new Fret(1, 1));
        PlayedComparison found = compare(
                InventedRun.of(1, 0).played(two, chance), InventedRun.of(9, 0).played(two, chance), SetUpSpread.USUAL);

        PlayedChange early = change(found, PlayedQuantity.EARLY_DECAY);
        assertThat(early.verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(PlayedWords.sentence(early)).contains("too little was played");
        assertThat(found.questions()).isZero();
    }

    @Test
    void plucksAreComparedStringByString() {
        PlayedComparison found =
                PlayedComparison.ofPlucks(plucks(0), plucks(4), PlayingSpread.of(SetUpSpread.given(0, 0, 0.5)), FINE);

        PlayedChange level = change(found, PlayedQuantity.LEVEL);
        assertThat(level.strings()).extracting(OnString::string).containsExactly(1, 2);
        assertThat(level.verdict()).isEqualTo(Verdict.DIFFERS);
        assertThat(level.estimate().orElseThrow().value()).isCloseTo(4, within(0.5));
        assertThat(level.places()).isEmpty();
        assertThat(PlayedWords.sentence(change(found, PlayedQuantity.LOUDNESS)))
                .as("no loudness was measured")
                .contains("too little was played in both");
    }

    private PluckRun plucks(double louderDb) {
        List<Pluck> plucks = IntStream.range(0, 20)
                .mapToObj(i -> new Pluck(
                        0,
                        i,
                        Optional.of(1 + i % 2),
                        Optional.of(-30 + louderDb + 0.3 * chance.nextGaussian()),
                        Optional.empty(),
                        Optional.empty(),
                        List.of()))
                .toList();
        return new PluckRun(plucks, Tuning.CLASSICAL, Optional.empty(), "plucks-test");
    }
}
