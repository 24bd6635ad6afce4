package io.github.tapwright.note;

import io.github.tapwright.signal.Fourier;
import io.github.tapwright.signal.Window;
import io.github.tapwright.statistics.Median;
import java.util.Arrays;

/**
 * Mean square of the noise under a note.
 *
 * @param meanSquare re full scale squared
 * @param samples how many samples it was estimated from
 */
record NoiseFloor(double meanSquare, int samples) {

    private static final double LEAD_IN_SECONDS = 0.05;
    private static final double TAIL_SHARE = 0.15;
    private static final int LEAST_TAIL = 256;
    private static final int GROUP_BINS = 64;
    private static final double STILL_RINGING = 0.5;

    /**
     * Estimates the noise: before the pluck if something was recorded there, and at the end of the decay. There, what the
     * partials still give is taken off; while they ring on, what lies between them is taken instead. The larger holds.
     *
     * @param signal samples
     * @param decay where the note is
     * @param rateHz samples per second
     * @param partialPowerAtEnd mean square of the fitted partials over the last part
     * @return the noise
     */
    static NoiseFloor of(double[] signal, FreeDecay decay, double rateHz, double partialPowerAtEnd) {
        int length = decay.end() - decay.pluck().onset();
        int tail = Math.min(length, Math.max(LEAST_TAIL, tailSamples(length)));
        int from = decay.end() - tail;
        double heard = meanSquare(signal, from, decay.end());
        double atEnd = partialPowerAtEnd < STILL_RINGING * heard
                ? heard - partialPowerAtEnd
                : Math.min(heard, betweenLines(signal, from, decay.end()));
        int quiet = decay.pluck().quiet();
        double before = quiet >= LEAD_IN_SECONDS * rateHz ? meanSquare(signal, 0, quiet) : 0;
        return before > atEnd ? new NoiseFloor(before, quiet) : new NoiseFloor(atEnd, tail);
    }

    /** How many samples the last part of a decay has. */
    static int tailSamples(int length) {
        return (int) (TAIL_SHARE * length);
    }

    private static double meanSquare(double[] signal, int from, int to) {
        double sum = 0;
        for (int n = from; n < to; n++) {
            sum += signal[n] * signal[n];
        }
        return sum / Math.max(1, to - from);
    }

    /** Lower quartiles of groups of bins: of exponentially distributed powers they are ln(4/3) times the mean. */
    private static double betweenLines(double[] signal, int from, int to) {
        int length = (to - from) / 4 * 4;
        double[] windowed = Window.BLACKMAN_HARRIS.periodic(length);
        double windowEnergy = 0;
        for (int n = 0; n < length; n++) {
            windowEnergy += windowed[n] * windowed[n];
            windowed[n] *= signal[from + n];
        }
        double[] power = new Fourier(length).power(windowed);
        double sum = 0;
        for (int k = 0; k < power.length; k += GROUP_BINS) {
            int end = Math.min(power.length, k + GROUP_BINS);
            sum += (end - k) * Median.quantile(Arrays.copyOfRange(power, k, end), 0.25) / Math.log(4.0 / 3);
        }
        return 2 * sum / windowEnergy / length;
    }
}
