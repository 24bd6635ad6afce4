package io.github.tapwright.tap;

import io.github.tapwright.signal.Fourier;
import io.github.tapwright.statistics.StudentQuantile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Averages the decays' spectra into a response curve.
 *
 * <p>Each decay's spectrum is taken in dB and its own mean over the band subtracted, which takes the
 * strength of the tap out; then mean and 95 % interval are formed at every frequency. The decays are used
 * as they are, no window, since they start after the contact and die out by themselves: a steady tone
 * would be 0.886/T wide at half power. Source: [Harris1978], table 1, rectangle.
 */
public final class ResponseCurveAverage {

    private static final double SPACING_HZ = 0.5;
    private static final double RECTANGLE_HALF_POWER_BINS = 0.886;
    private static final double FLOOR = 1e-30;

    private ResponseCurveAverage() {}

    /**
     * The response curve of a set of decays.
     *
     * @param decays at least one
     * @param settings the band to show
     * @return the curve, 0 dB at its highest point
     */
    public static ResponseCurve of(Decays decays, TapSettings settings) {
        int size = decays.length();
        while (decays.rateHz() / size > SPACING_HZ) {
            size *= 2;
        }
        Fourier fourier = new Fourier(size);
        int first = (int) Math.ceil(settings.lowHz() * size / decays.rateHz());
        int last = (int) Math.floor(settings.highHz() * size / decays.rateHz());
        double[][] levels = new double[decays.count()][];
        for (int s = 0; s < levels.length; s++) {
            levels[s] = levels(fourier.power(Arrays.copyOf(decays.decay(s), size)), first, last);
        }
        return curve(levels, first, decays.rateHz() / size, RECTANGLE_HALF_POWER_BINS / decays.seconds());
    }

    private static double[] levels(double[] power, int first, int last) {
        double[] db = new double[last - first + 1];
        for (int k = first; k <= last; k++) {
            db[k - first] = 10 * Math.log10(power[k] + FLOOR);
        }
        double mean = Arrays.stream(db).average().orElseThrow();
        return Arrays.stream(db).map(d -> d - mean).toArray();
    }

    private static ResponseCurve curve(double[][] levels, int first, double binHz, double resolutionHz) {
        int strikes = levels.length;
        double coverage = strikes > 1 ? StudentQuantile.of(0.975, strikes - 1.0) : 0;
        double[] mean = new double[levels[0].length];
        double top = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < mean.length; k++) {
            int bin = k;
            mean[k] = Arrays.stream(levels).mapToDouble(l -> l[bin]).average().orElseThrow();
            top = Math.max(top, mean[k]);
        }
        List<ResponseCurve.Point> points = new ArrayList<>(mean.length);
        for (int k = 0; k < mean.length; k++) {
            double half = coverage * standardErrorOfMean(levels, k, mean[k]);
            double level = mean[k] - top;
            points.add(new ResponseCurve.Point((first + k) * binHz, level, level - half, level + half));
        }
        return new ResponseCurve(points, resolutionHz, strikes);
    }

    private static double standardErrorOfMean(double[][] levels, int k, double mean) {
        int n = levels.length;
        if (n < 2) {
            return 0;
        }
        double sum = 0;
        for (double[] level : levels) {
            sum += (level[k] - mean) * (level[k] - mean);
        }
        return Math.sqrt(sum / (n - 1) / n);
    }
}
