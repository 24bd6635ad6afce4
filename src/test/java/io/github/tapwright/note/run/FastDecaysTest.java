package io.github.tapwright.note.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.synthesis.Chance;
import java.util.HashMap;
import java.util.Map;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/** A dead note stands out of a string whose decay shortens up the neck; ordinary scatter does not. */
class FastDecaysTest {

    private static Map<Fret, Double> fingerboard(long seed) {
        RandomGenerator chance = Chance.seeded(seed);
        Map<Fret, Double> times = new HashMap<>();
        for (int string = 1; string <= 6; string++) {
            for (int fret = 0; fret <= 12; fret++) {
                times.put(new Fret(string, fret), (2 + string) * Math.exp(-0.05 * fret + 0.1 * chance.nextGaussian()));
            }
        }
        return times;
    }

    @Test
    void aDeadNoteIsPointedOutWithWhatItsNeighboursLetExpect() {
        Map<Fret, Double> times = fingerboard(1);
        times.put(new Fret(4, 7), 0.4 * 6 * Math.exp(-0.35));
        assertThat(FastDecays.in(times)).hasSize(1).first().satisfies(f -> {
            assertThat(f.place()).isEqualTo(new Fret(4, 7));
            assertThat(f.decayTimeSeconds() / f.usualSeconds()).isCloseTo(0.4, within(0.08));
            assertThat(f.deviations()).isGreaterThan(3.5);
        });
    }

    @Test
    void fourHundredOrdinaryStringsHaveHardlyAnyDeadNote() {
        int pointedOut = 0;
        for (long seed = 1; seed <= 67; seed++) {
            pointedOut += FastDecays.in(fingerboard(seed)).size();
        }
        assertThat(pointedOut).isLessThan(10); // of 67 · 78 = 5226 notes
    }

    @Test
    void tooFewNeighboursAreNoGround() {
        Map<Fret, Double> times = new HashMap<>();
        for (int fret = 0; fret < 4; fret++) {
            times.put(new Fret(1, fret), fret == 2 ? 0.1 : 4.0);
        }
        assertThat(FastDecays.in(times)).isEmpty();
        assertThat(FastDecays.judged(times)).isZero();
        times.put(new Fret(1, 4), 4.0);
        assertThat(FastDecays.judged(times)).isEqualTo(5);
    }
}
