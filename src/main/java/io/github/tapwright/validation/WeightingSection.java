package io.github.tapwright.validation;

import io.github.tapwright.level.FrequencyWeighting;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.signal.SecondOrderSection;
import java.util.ArrayList;
import java.util.List;

/** Weightings A and C of sound level meters. */
final class WeightingSection implements Section {

    private static final double RATE_HZ = 48_000;

    @Override
    public String title() {
        return "Weightings of sound level meters";
    }

    @Override
    public String about() {
        return "The formulas of A and C at the standard's frequencies, and the digital filters that weight recordings at 48 kHz"
                + " against its class 1 limits.";
    }

    @Override
    public List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        PublishedTable.rows("weightings/class-1.csv").forEach(row -> {
            double hertz = 1000 * Math.pow(10, row.whole("band") / 10.0);
            add(checks, row, FrequencyWeighting.A, "a", hertz);
            add(checks, row, FrequencyWeighting.C, "c", hertz);
        });
        return checks;
    }

    private static void add(
            List<Check> checks, PublishedRow row, FrequencyWeighting weighting, String letter, double hertz) {
        String at = weighting + " at " + Math.round(hertz * 10) / 10.0 + " Hz";
        checks.add(new Check(
                at + ", formula",
                row.number("exact_" + letter + "_db"),
                "dB",
                row.text("source"),
                Tolerance.within(0.00051, "half a unit of the last digit of the unrounded values"),
                () -> weighting.decibels(hertz)));
        checks.add(new Check(
                at + ", filter",
                row.number("rounded_" + letter + "_db"),
                "dB",
                row.text("source"),
                new Tolerance(row.number("below_db"), row.number("above_db"), "class 1 limits of the same table"),
                () -> gainDb(weighting, hertz)));
    }

    private static double gainDb(FrequencyWeighting weighting, double hertz) {
        double power = 1;
        for (SecondOrderSection section : weighting.sections(new SampleRate(RATE_HZ))) {
            power *= section.powerGain(hertz, RATE_HZ);
        }
        return 10 * Math.log10(power);
    }
}
