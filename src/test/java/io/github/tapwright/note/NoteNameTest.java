package io.github.tapwright.note;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NoteNameTest {

    /** Frequencies from f = 440·2^(n/12), exact by definition of the equally tempered scale. */
    @ParameterizedTest
    @CsvSource({
        "A4, 440",
        "E2, 82.4069",
        "Bb3, 233.0819",
        "F#4, 369.9944",
        "C4, 261.6256",
        "e4, 329.6276",
        "B♭3, 233.0819"
    })
    void readsNamesAndKnowsTheirFrequency(String text, double hz) {
        NoteName note = NoteName.read(text).orElseThrow();
        assertThat(note.hz(440)).isCloseTo(hz, within(1e-4));
        assertThat(NoteName.nearest(hz * 1.02, 440)).isEqualTo(note);
        assertThat(note.centsTo(hz * Math.pow(2, 0.1), 440)).isCloseTo(120, within(0.01));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "H2", "E", "E22", "Z#1", "C-9"})
    void whatIsNoNoteIsNone(String text) {
        assertThat(NoteName.read(text)).isEmpty();
    }

    @Test
    void writesSharps() {
        assertThat(NoteName.read("Bb3").map(NoteName::toString)).isEqualTo(Optional.of("A#3"));
        assertThat(NoteName.nearest(27.5, 440)).hasToString("A0");
    }

    @Test
    void settingsRefuseWhatNoAnalysisCanHonour() {
        NoteSettings s = NoteSettings.STANDARD;
        assertThatThrownBy(() -> s.withA4(300)).hasMessageContaining("between 380 and 480");
        assertThatThrownBy(() -> new NoteSettings(440, 10, 1600, 8000, Optional.empty()))
                .hasMessageContaining("between 25 and 2500");
        assertThatThrownBy(() -> new NoteSettings(440, 38, 1600, 1500, Optional.empty()))
                .hasMessageContaining("above every pitch");
        assertThatThrownBy(() -> NoteAnalysis.analyse(Sound.of(4000, new double[4000]), s))
                .hasMessageContaining("record at 44100");
        assertThatThrownBy(() -> new NoteName(100)).isInstanceOf(IllegalArgumentException.class);
    }
}
