package io.github.tapwright.synthesis;

/**
 * How strong a piece of sound is: its rms over everything, or only in a band.
 *
 * <p>Band power is taken from blocks of 100 ms without a window: the sum of 2|X_k|²/N² over the bins from
 * {@code lowHz} to {@code highHz}, both included, averaged over the whole blocks.
 */
public final class Levels {

    /** Length of the blocks behind a band's power, and of the decay a signal-to-noise ratio looks at, s. */
    public static final double BLOCK_SECONDS = 0.1;

    private Levels() {}

    /**
     * Ratio as a level: 20·lg(ratio).
     *
     * @param ratio of amplitudes, greater than 0
     */
    public static double db(double ratio) {
        return 20 * Math.log10(ratio);
    }

    /**
     * Level as a ratio of amplitudes.
     *
     * @param db level
     */
    public static double ratio(double db) {
        return Math.pow(10, db / 20);
    }

    /**
     * Root mean square of all samples.
     *
     * @param samples at least one
     */
    public static double rms(double[] samples) {
        double sum = 0;
        for (double x : samples) {
            sum += x * x;
        }
        return Math.sqrt(sum / samples.length);
    }

    /**
     * Root mean square within a band.
     *
     * @param samples at least 100 ms
     * @param rateHz sample rate
     * @param lowHz lower edge
     * @param highHz upper edge
     */
    public static double bandRms(double[] samples, double rateHz, double lowHz, double highHz) {
        int block = (int) Math.round(BLOCK_SECONDS * rateHz);
        int blocks = samples.length / block;
        double power = 0;
        for (int b = 0; b < blocks; b++) {
            for (int k = bin(lowHz, block, rateHz); k <= bin(highHz, block, rateHz); k++) {
                power += 2 * squaredBin(samples, b * block, block, k);
            }
        }
        return Math.sqrt(power / blocks);
    }

    /**
     * Largest magnitude.
     *
     * @param samples any number
     */
    public static double peak(double[] samples) {
        double peak = 0;
        for (double x : samples) {
            peak = Math.max(peak, Math.abs(x));
        }
        return peak;
    }

    /**
     * Scales in place so that the largest magnitude is {@code peak}; silence stays silence.
     *
     * @param samples changed in place
     * @param peak wanted
     */
    public static void scaleToPeak(double[] samples, double peak) {
        double now = peak(samples);
        for (int n = 0; now > 0 && n < samples.length; n++) {
            samples[n] *= peak / now;
        }
    }

    private static int bin(double hertz, int block, double rateHz) {
        return (int) Math.round(hertz * block / rateHz);
    }

    /** |X_k|²/N² by Goertzel's recursion; source: textbook, from memory, checked by LevelsTest. */
    private static double squaredBin(double[] samples, int from, int length, int k) {
        double w = 2 * Math.PI * k / length;
        double twoCos = 2 * Math.cos(w);
        double s1 = 0;
        double s2 = 0;
        for (int n = 0; n < length; n++) {
            double s = samples[from + n] + twoCos * s1 - s2;
            s2 = s1;
            s1 = s;
        }
        return (s1 * s1 + s2 * s2 - twoCos * s1 * s2) / ((double) length * length);
    }
}
