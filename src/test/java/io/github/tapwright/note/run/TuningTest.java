package io.github.tapwright.note.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Tunings as makers write them. */
class TuningTest {

    @Test
    void theClassicalTuningIsTheOneOfItsNames() {
        Tuning named = Tuning.named(Tuning.CLASSICAL_NOTES, 440, 19);

        assertThat(named.fretCount()).isEqualTo(Tuning.CLASSICAL.fretCount());
        for (int string = 1; string <= 6; string++) {
            assertThat(named.hz(new Fret(string, 0))).isCloseTo(Tuning.CLASSICAL.hz(new Fret(string, 0)), within(1e-3));
        }
    }

    @Test
    void namesCountFromTheTuningNoteAndMayStandWithCommasOrSpaces() {
        Tuning low = Tuning.named(" D2  A2, D3,G3 B3 , E4 ", 415, 20);

        assertThat(low.openHz()).hasSize(6);
        assertThat(low.hz(new Fret(5, 12))).as("A3 is half the tuning note").isCloseTo(207.5, within(1e-9));
        assertThat(low.hz(new Fret(6, 7))).as("D2 and a fifth").isCloseTo(103.75, within(1e-9));
    }

    @Test
    void aWordThatIsNoNoteIsNamedWithWhatToWrite() {
        assertThatThrownBy(() -> Tuning.named("E2,A2,X3", 440, 19))
                .hasMessage("'X3' is no note; give the open strings from the lowest up, such as E2,A2,D3,G3,B3,E4");
        assertThatThrownBy(() -> Tuning.named("", 440, 19)).hasMessageStartingWith("'' is no note");
        assertThatThrownBy(() -> Tuning.named("E0", 440, 19)).hasMessageContaining("between 38 and 1600 Hz");
    }
}
