package io.github.tapwright.note;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.StringNote;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pitch within 0.3 cent and B within 3 % on strings that lead simple methods astray; truth from the synthesis itself. */
class PitchTest {

    private static final double CENTS = 0.3;

    static Stream<Arguments> strings() {
        return Stream.of(
                Arguments.of("low E", StringNote.plain(81.7, 1.1e-4, 5, 2.5).damped(0.03)),
                Arguments.of(
                        "dropped to B1", StringNote.plain(61.3, 9e-5, 5, 2.5).damped(0.03)),
                Arguments.of(
                        "no fundamental", StringNote.plain(110.2, 5e-5, 4, 1.5).without(1)),
                Arguments.of(
                        "no first three partials",
                        StringNote.plain(98.1, 8e-5, 4, 1.5).without(1, 2, 3)),
                Arguments.of(
                        "plucked in the middle",
                        StringNote.plain(147.1, 6e-5, 3, 1.5).pluckedAt(0.5)),
                Arguments.of(
                        "plucked at a third",
                        StringNote.plain(196.4, 6e-5, 3, 1.5).pluckedAt(1 / 3.0)),
                Arguments.of(
                        "plucked at a quarter",
                        StringNote.plain(130.5, 6e-5, 3, 1.5).pluckedAt(0.25)),
                Arguments.of("very stiff", StringNote.plain(82.0, 1e-3, 4, 1.5).damped(0.05)),
                Arguments.of("high", StringNote.plain(697.3, 1e-4, 1.2, 1.0)),
                Arguments.of("highest fret", StringNote.plain(1316.0, 3e-4, 0.6, 0.7)),
                Arguments.of(
                        "two planes", StringNote.plain(246.9, 7e-5, 1.2, 2.5).inTwoPlanes(5, 0.3, 0)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("strings")
    void findsPitchAndStretch(String name, StringNote string) {
        NoteResult result =
                NoteAnalysis.analyse(string.recording(44_100, Chance.seeded(11)).stream(), NoteSettings.STANDARD);
        Pitch pitch = result.pitch().found().orElseThrow();
        assertThat(Cents.between(string.pitchHz(), pitch.hz().value())).as(name).isCloseTo(0, within(CENTS));
        assertThat(result.inharmonicity().found().orElseThrow().value())
                .isCloseTo(string.stretch(), Percentage.withPercentage(3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {8000, 11_025, 22_050, 44_100, 48_000, 96_000, 192_000})
    void worksAtEveryUsualSampleRate(double rateHz) {
        StringNote string = StringNote.plain(110.4, 6e-5, 3, 1.2).damped(0.05);
        NoteResult result =
                NoteAnalysis.analyse(string.recording(rateHz, Chance.seeded(3)).stream(), NoteSettings.STANDARD);
        Pitch pitch = result.pitch().found().orElseThrow();
        assertThat(pitch.nearest()).hasToString("A2");
        assertThat(Cents.between(string.pitchHz(), pitch.hz().value())).isCloseTo(0, within(CENTS));
        assertThat(result.onsetSeconds().found().orElseThrow()).isCloseTo(0.2, within(0.003));
    }

    @Test
    void aBodyThatPullsThreeLowPartialsDoesNotMoveTheSeries() {
        StringNote string = StringNote.plain(110.0, 6e-5, 3, 1.5).without(1, 2, 3);
        double[] x = string.samples(22_050, Chance.seeded(5));
        int lead = (int) (0.2 * 22_050);
        double[] pulledCents = {12, -9, 6};
        for (int n = 1; n <= 3; n++) {
            double hz = string.hz(n) * Math.pow(2, pulledCents[n - 1] / 1200);
            for (int i = lead; i < x.length; i++) {
                double t = (i - lead) / 22_050.0;
                x[i] += 0.03 * Math.exp(-2.3 * t) * Math.cos(2 * Math.PI * hz * t);
            }
        }
        NoteResult result = NoteAnalysis.analyse(Sound.of(22_050, x), NoteSettings.STANDARD);
        assertThat(Cents.between(
                        110.0, result.pitch().found().orElseThrow().hz().value()))
                .isCloseTo(0, within(CENTS));
        assertThat(result.partials().stream().filter(p -> !p.fitsSeries()).map(Partial::number))
                .containsExactly(1, 2, 3);
        assertThat(result.partials().get(0).seriesCents()).isCloseTo(12, within(0.5));
    }

    @Test
    void theTuningNoteMovesTheCents() {
        StringNote string = StringNote.plain(110.0, 5e-5, 3, 1);
        NoteResult result = NoteAnalysis.analyse(
                string.recording(22_050, Chance.seeded(1)).stream(), NoteSettings.STANDARD.withA4(442));
        // 1200·log2(440/442) = −7.85 cents
        assertThat(result.pitch().found().orElseThrow().cents().value()).isCloseTo(-7.85, within(CENTS));
    }

    @Test
    void anUnexpectedNoteIsSaid() {
        NoteName expected = NoteName.read("B2").orElseThrow();
        NoteResult result = NoteAnalysis.analyse(
                StringNote.plain(110.0, 5e-5, 3, 1).recording(22_050, Chance.seeded(1)).stream(),
                NoteSettings.STANDARD.expecting(expected));
        // 1200·log2(110/123.47) = −200 cents
        assertThat(result.warnings()).contains("B2 was expected, but the pitch lies −200 cents off it");
    }
}
