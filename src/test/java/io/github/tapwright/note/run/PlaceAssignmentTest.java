package io.github.tapwright.note.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.tapwright.synthesis.Chance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/** Strings and frets of runs as people play them. */
class PlaceAssignmentTest {

    private static List<Fret> stringByString(int topFret) {
        List<Fret> run = new ArrayList<>();
        for (int string = 6; string >= 1; string--) {
            for (int fret = 0; fret <= topFret; fret++) {
                run.add(new Fret(string, fret));
            }
        }
        return run;
    }

    private static List<Optional<Double>> pitches(List<Fret> run, double centsOff) {
        RandomGenerator chance = Chance.seeded(9);
        return run.stream()
                .map(p -> Optional.of(
                        Tuning.CLASSICAL.hz(p) * Math.pow(2, centsOff * (2 * chance.nextDouble() - 1) / 1200)))
                .toList();
    }

    private static List<Fret> assigned(List<Optional<Double>> pitches, PlayingOrder order) {
        return PlaceAssignment.of(pitches, Tuning.CLASSICAL, order).stream()
                .map(Optional::orElseThrow)
                .toList();
    }

    @Test
    void everyFretOfEveryStringInOrder() {
        List<Fret> run = stringByString(12);
        assertThat(assigned(pitches(run, 20), PlayingOrder.STRING_BY_STRING)).isEqualTo(run);
    }

    @Test
    void theSamePitchAgainIsTheNextStringsOpenNote() {
        List<Fret> run = stringByString(5);
        assertThat(assigned(pitches(run, 5), PlayingOrder.STRING_BY_STRING)).isEqualTo(run);
    }

    @Test
    void aChromaticScaleAcrossTheStringsInFirstPosition() {
        List<Fret> run = new ArrayList<>();
        for (int string = 6; string >= 1; string--) {
            for (int fret = 0; fret <= (string == 3 ? 3 : 4); fret++) {
                run.add(new Fret(string, fret));
            }
        }
        assertThat(assigned(pitches(run, 15), PlayingOrder.LOWEST_FRET)).isEqualTo(run);
    }

    @Test
    void aNoteWithoutPitchLeavesAGapAndTheRestInPlace() {
        List<Fret> run = stringByString(5);
        List<Optional<Double>> pitches = new ArrayList<>(pitches(run, 5));
        pitches.set(8, Optional.empty());
        List<Optional<Fret>> places = PlaceAssignment.of(pitches, Tuning.CLASSICAL, PlayingOrder.STRING_BY_STRING);
        assertThat(places.get(8)).isEmpty();
        assertThat(places.get(9)).contains(run.get(9));
    }

    @Test
    void aPitchBetweenTwoFretsIsOnNone() {
        double between = Tuning.CLASSICAL.hz(new Fret(6, 0)) * Math.pow(2, -0.9 / 12);
        assertThat(PlaceAssignment.of(List.of(Optional.of(between)), Tuning.CLASSICAL, PlayingOrder.STRING_BY_STRING))
                .containsExactly(Optional.empty());
    }

    @Test
    void tuningsNoGuitarHasAreRefused() {
        assertThatThrownBy(() -> new Tuning(List.of(), 19)).hasMessageContaining("1 to 12 open strings");
        assertThatThrownBy(() -> new Tuning(List.of(37.0), 19)).hasMessageContaining("38 and 1600 Hz");
        assertThatThrownBy(() -> new Tuning(List.of(110.0), 99)).hasMessageContaining("0 to 36 frets");
        assertThatThrownBy(() -> new Fret(0, 1)).hasMessageContaining("count from 1");
    }
}
