package io.github.tapwright.validation;

import io.github.tapwright.level.loudness.HeardLoudness;
import io.github.tapwright.level.loudness.Loudness;
import io.github.tapwright.level.loudness.LoudnessMeter;
import io.github.tapwright.level.loudness.SoundField;
import io.github.tapwright.level.loudness.ThirdOctaveLevels;
import io.github.tapwright.recording.SampleRate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/** Loudness of steady sounds, Zwicker's method. */
final class LoudnessSection implements Section {

    private static final String TABLE = "iso532-1/annex-b.csv";
    private static final double RATE_HZ = 48_000;
    /** dB SPL of a mean square of 1, when a sine of full scale is 100 dB as in annex B. */
    private static final double FULL_SCALE_LEVEL_DB = 100 + 10 * Math.log10(2);

    @Override
    public String title() {
        return "Loudness in sone";
    }

    @Override
    public String about() {
        return "Annex B of the standard: 28 band levels, and tones of 4 s through filters and all, free field.";
    }

    @Override
    public List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        PublishedRow sone = row("signal_1", "N_sone");
        checks.add(new Check(
                "signal 1, loudness",
                sone.number("value"),
                "sone",
                sone.text("source"),
                Tolerance.share(1e-4, sone.number("value"), "the digits printed; the standard allows 5 %"),
                () -> signal1().loudnessSone()));
        PublishedRow phon = row("signal_1", "LN_phon");
        checks.add(new Check(
                "signal 1, loudness level",
                phon.number("value"),
                "phon",
                phon.text("source"),
                Tolerance.within(0.001, "the digits printed"),
                () -> signal1().loudnessLevelPhon()));
        tone(checks, "signal_2", 250, 80);
        tone(checks, "signal_3", 1000, 60);
        tone(checks, "signal_4", 4000, 40);
        double[][] equal = {{40, 8.5955}, {50, 16.9575}, {60, 31.9388}, {70, 58.7813}, {80, 107.0863}};
        for (double[] c : equal) {
            checks.add(new Check(
                    "28 bands of " + Numbers.expected(c[0]) + " dB",
                    c[1],
                    "sone",
                    "derived, another implementation of the tables of [ISO532-1]",
                    Tolerance.share(1e-4, c[1], "the digits of that calculation"),
                    () -> steady(Collections.nCopies(28, c[0])).loudnessSone()));
        }
        return checks;
    }

    private static void tone(List<Check> checks, String signal, double hertz, double levelDb) {
        PublishedRow row = row(signal, "N_sone_4dp");
        checks.add(new Check(
                signal.replace('_', ' ') + ", tone of " + Numbers.expected(hertz) + " Hz at "
                        + Numbers.expected(levelDb) + " dB",
                row.number("value"),
                "sone",
                row.text("source"),
                Tolerance.share(0.005, row.number("value"), "the standard's sound files are rounded; it allows 5 %"),
                () -> heard(MadeSound.sine(RATE_HZ, 4, hertz, levelDb - 100)).loudnessSone()));
    }

    private static Loudness signal1() {
        return steady(IntStream.range(0, 28)
                .mapToObj(i -> row("signal_1", "level_" + i).number("value"))
                .toList());
    }

    private static PublishedRow row(String signal, String quantity) {
        return PublishedTable.row(TABLE, "signal", signal, "quantity", quantity);
    }

    private static Loudness steady(List<Double> levelsDb) {
        return Loudness.ofSteadySound(new ThirdOctaveLevels(levelsDb), SoundField.FREE);
    }

    private static Loudness heard(double[] samples) {
        LoudnessMeter meter = new LoudnessMeter(new SampleRate(RATE_HZ), FULL_SCALE_LEVEL_DB, SoundField.FREE);
        int block = 4096;
        for (int start = 0; start < samples.length; start += block) {
            int count = Math.min(block, samples.length - start);
            meter.take(Arrays.copyOfRange(samples, start, start + count), count);
        }
        if (meter.finish() instanceof HeardLoudness heard) {
            return heard.steady();
        }
        throw new IllegalStateException("the meter heard nothing");
    }
}
