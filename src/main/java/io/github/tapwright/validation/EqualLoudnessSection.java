package io.github.tapwright.validation;

import io.github.tapwright.level.loudness.EqualLoudness;
import java.util.ArrayList;
import java.util.List;

/** Equal-loudness contours. */
final class EqualLoudnessSection implements Section {

    @Override
    public String title() {
        return "Equal-loudness contours";
    }

    @Override
    public String about() {
        return "Level of a pure tone that is as loud as one of 1 kHz.";
    }

    @Override
    public List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        for (double phon : new double[] {20, 40, 60, 80, 90}) {
            checks.add(level(
                    phon,
                    1000,
                    phon,
                    "[ISO226], by definition a contour passes 1 kHz at its own number",
                    Tolerance.within(0.05, "the formula's constants are rounded to 0.1 phon")));
        }
        Tolerance tenth = Tolerance.within(0.051, "the table is rounded to 0.1 dB");
        checks.add(level(60, 100, 78.5, "[ISO226], table B.1, as quoted by [Phonometry]", tenth));
        checks.add(level(60, 2000, 60.0, "[ISO226], table B.1, as quoted by [Phonometry]", tenth));
        for (double hertz : new double[] {31.5, 250, 3150, 8000}) {
            checks.add(new Check(
                    "there and back, " + Numbers.expected(hertz) + " Hz",
                    57,
                    "phon",
                    "derived, the inverse undoes the formula",
                    Tolerance.within(1e-9, "rounding of the computer"),
                    () -> EqualLoudness.phon(
                                    hertz, EqualLoudness.levelDb(hertz, 57).orElseThrow())
                            .orElseThrow()));
        }
        return checks;
    }

    private static Check level(double phon, double hertz, double expectedDb, String source, Tolerance tolerance) {
        return new Check(
                Numbers.expected(phon) + " phon at " + Numbers.expected(hertz) + " Hz",
                expectedDb,
                "dB",
                source,
                tolerance,
                () -> EqualLoudness.levelDb(hertz, phon).orElseThrow());
    }
}
