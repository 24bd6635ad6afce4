package io.github.tapwright.comparison.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.comparison.body.ScaleNote.Place;
import io.github.tapwright.mode.body.Answer.Inferred;
import io.github.tapwright.statistics.Interval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A2 is 110 Hz, a semitone 5.946 %, 25 cents 1.455 %, from A4 = 440 Hz [ISO16]. */
class ScaleNoteTest {

    private static ScaleNote at(double hz, double half) {
        return ScaleNote.of(new Inferred(hz, half / 2, new Interval(hz - half, hz + half)));
    }

    @ParameterizedTest
    @CsvSource({
        "110, 0.5, A2, WOLF",
        "111, 0.5, A2, WOLF",
        "111, 1, A2, CANNOT_TELL",
        "113.2, 0.5, A2, BETWEEN",
        "113.4, 0.5, A#2, BETWEEN",
        "113.2, 4, A2, CANNOT_TELL",
        "70, 0.1, C#2, OUTSIDE"
    })
    void aResonanceAndItsNote(double hz, double half, String note, Place place) {
        assertThat(at(hz, half).note()).hasToString(note);
        assertThat(at(hz, half).place()).isEqualTo(place);
    }

    @Test
    void cents() {
        assertThat(at(111.6, 0.1).cents()).isCloseTo(25, within(0.1));
        assertThat(at(111.6, 0.1).cents95().width()).isCloseTo(3.1, within(0.05));
    }
}
