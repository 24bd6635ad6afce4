package io.github.tapwright.level;

import io.github.tapwright.level.CalibrationRefusal.Reason;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Turns a recorded calibrator tone into a calibration, or says why it cannot be trusted.
 *
 * <p>The longest stretch within 0.5 dB of the usual level must last 3 s; in it the frequency must lie within
 * 1.7 % of 1 kHz or 250 Hz, the level of 0.1 s pieces within ±0.15 dB, and distortion with noise below 3 %: the
 * limits of a class 2 calibrator, [IEC60942], so that only tones no proper calibrator makes are refused.
 */
public final class CalibrationCheck {

    /** Version of the method, raised when its numbers change. */
    public static final String METHOD_VERSION = "calibration-1";

    private static final double[] FREQUENCIES_HZ = {1000, 250};
    private static final double FREQUENCY_TOLERANCE = 0.017;
    private static final double FLUCTUATION_DB = 0.15;
    private static final double IMPURITY_PERCENT = 3;
    private static final double LEAST_SECONDS = 3;
    private static final double LEAST_POWER = 1e-8; // −80 dB re full scale
    private static final double CLIPPED = 0.999;

    private CalibrationCheck() {}

    /**
     * Checks a recorded tone.
     *
     * @param samples one channel re full scale, some ten seconds of the tone
     * @param rate sample rate
     * @param tone what the calibrator promises
     * @return a calibration or the reason why not
     */
    public static CalibrationResult of(double[] samples, SampleRate rate, CalibratorTone tone) {
        SteadyPart part = SteadyPart.of(samples, rate.hertz());
        if (meanSquare(samples) < LEAST_POWER) {
            return new CalibrationRefusal(
                    Reason.TOO_QUIET,
                    "the recording is below " + Figures.text(10 * Math.log10(LEAST_POWER), 0) + " dB re full scale");
        }
        if (rate.seconds(part.length()) < LEAST_SECONDS) {
            return refuse(Reason.UNSTEADY, "the level is even for %.1f s only", rate.seconds(part.length()));
        }
        double[] steady = Arrays.copyOfRange(samples, part.first(), part.first() + part.length());
        double peak = Arrays.stream(steady).map(Math::abs).max().orElse(0);
        if (peak >= CLIPPED) {
            return refuse(Reason.CLIPPED, "the tone reaches %.2f of full scale", peak);
        }
        return ofSteadyTone(steady, part.segment(), rate, tone);
    }

    private static CalibrationResult ofSteadyTone(double[] steady, int segment, SampleRate rate, CalibratorTone tone) {
        double hertz = ToneFrequency.hertz(steady, 0, 10 * segment, rate.hertz());
        if (Arrays.stream(FREQUENCIES_HZ).noneMatch(f -> Math.abs(hertz / f - 1) <= FREQUENCY_TOLERANCE)) {
            return refuse(Reason.WRONG_FREQUENCY, "the tone lies at %.1f Hz", hertz);
        }
        SineFit[] fits = IntStream.range(0, steady.length / segment)
                .mapToObj(s -> SineFit.of(steady, s * segment, segment, 2 * Math.PI * hertz / rate.hertz()))
                .toArray(SineFit[]::new);
        double[] levelsDb =
                Arrays.stream(fits).mapToDouble(f -> 10 * Math.log10(f.power())).toArray();
        double power = Arrays.stream(fits).mapToDouble(SineFit::power).average().orElseThrow();
        double rest =
                Arrays.stream(fits).mapToDouble(SineFit::restPower).average().orElseThrow();
        double fluctuationDb = (Arrays.stream(levelsDb).max().orElseThrow()
                        - Arrays.stream(levelsDb).min().orElseThrow())
                / 2;
        double impurityPercent = 100 * Math.sqrt(rest / power);
        if (impurityPercent > IMPURITY_PERCENT) {
            return refuse(Reason.IMPURE, "distortion and noise are %.1f %% of the tone", impurityPercent);
        }
        if (fluctuationDb > FLUCTUATION_DB) {
            return refuse(Reason.UNSTEADY, "the level wanders by ±%.2f dB", fluctuationDb);
        }
        return new Calibration(
                fullScaleLevel(power, levelsDb, tone),
                tone,
                hertz,
                fluctuationDb,
                impurityPercent,
                rate.seconds(steady.length),
                METHOD_VERSION);
    }

    private static Estimate fullScaleLevel(double power, double[] levelsDb, CalibratorTone tone) {
        double mean = Arrays.stream(levelsDb).average().orElseThrow();
        double variance = Arrays.stream(levelsDb)
                .map(l -> (l - mean) * (l - mean))
                .average()
                .orElseThrow();
        // slow drifts make neighbouring pieces alike, so the scatter is not divided by their number
        double u = Math.sqrt(tone.levelToleranceDb() * tone.levelToleranceDb() / 3 + variance);
        return Estimate.of(tone.levelDb() - 10 * Math.log10(power), u);
    }

    private static double meanSquare(double[] samples) {
        return Arrays.stream(samples).map(x -> x * x).average().orElse(0);
    }

    private static CalibrationRefusal refuse(Reason reason, String format, double value) {
        return new CalibrationRefusal(reason, String.format(Locale.ROOT, format, value));
    }
}
