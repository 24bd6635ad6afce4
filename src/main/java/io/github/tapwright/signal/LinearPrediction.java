package io.github.tapwright.signal;

/**
 * Predicts each sample from the ones before it; what is left over is what is new in the signal.
 *
 * <p>x̂[n] = −Σ a_k·x[n−k], k = 1 … p, with a from the autocorrelation method (Levinson and Durbin's
 * recursion). Decaying sines and steady hum are predictable; a contact is not, so it stands out in the
 * prediction error. Source: [Makhoul1975].
 */
public final class LinearPrediction {

    private static final double WHITE_FLOOR = 1e-9;

    private final double[] coefficients;

    LinearPrediction(double[] coefficients) {
        this.coefficients = coefficients;
    }

    /**
     * Learns a predictor.
     *
     * @param autocorrelation r[0] … r[p], r[0] greater than 0
     * @return the predictor of order p
     */
    public static LinearPrediction learn(double[] autocorrelation) {
        int order = autocorrelation.length - 1;
        double[] a = new double[order + 1];
        a[0] = 1;
        // A trace of white noise keeps the recursion stable for signals with empty bands.
        double error = autocorrelation[0] * (1 + WHITE_FLOOR);
        for (int m = 1; m <= order; m++) {
            double acc = autocorrelation[m];
            for (int k = 1; k < m; k++) {
                acc += a[k] * autocorrelation[m - k];
            }
            double reflection = -acc / error;
            double[] previous = a.clone();
            for (int k = 1; k < m; k++) {
                a[k] = previous[k] + reflection * previous[m - k];
            }
            a[m] = reflection;
            error *= 1 - reflection * reflection;
        }
        return new LinearPrediction(a);
    }

    /**
     * Adds a stretch of signal to an autocorrelation: r[k] += Σ x[n]·x[n+k].
     *
     * @param signal the samples
     * @param from first sample
     * @param to one past the last
     * @param autocorrelation shape [p+1], added to
     */
    public static void accumulate(double[] signal, int from, int to, double[] autocorrelation) {
        int k = 0;
        for (; k + 3 < autocorrelation.length; k += 4) {
            accumulateFour(signal, from, to, k, autocorrelation);
        }
        for (; k < autocorrelation.length; k++) {
            autocorrelation[k] += sum(0, signal, from, to, k);
        }
    }

    /** Four sums at once need not wait for each other; each adds in the same order as it would alone. */
    private static void accumulateFour(double[] signal, int from, int to, int k, double[] autocorrelation) {
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        int n = from;
        for (; n + k + 3 < to; n++) {
            double x = signal[n];
            int at = n + k;
            a += x * signal[at];
            b += x * signal[at + 1];
            c += x * signal[at + 2];
            d += x * signal[at + 3];
        }
        autocorrelation[k] += sum(a, signal, n, to, k);
        autocorrelation[k + 1] += sum(b, signal, n, to, k + 1);
        autocorrelation[k + 2] += sum(c, signal, n, to, k + 2);
        autocorrelation[k + 3] += d;
    }

    private static double sum(double before, double[] signal, int from, int to, int lag) {
        double sum = before;
        for (int n = from; n + lag < to; n++) {
            sum += signal[n] * signal[n + lag];
        }
        return sum;
    }

    /**
     * The prediction error of a signal, silence assumed before it.
     *
     * @param signal shape [N]
     * @return e[n] = Σ a_k·x[n−k], a_0 = 1, shape [N]
     */
    public double[] error(double[] signal) {
        double[] e = new double[signal.length];
        int n = 0;
        for (; n < Math.min(signal.length, coefficients.length); n++) {
            e[n] = error(signal, n);
        }
        for (; n + 3 < signal.length; n += 4) {
            fourErrors(signal, n, e);
        }
        for (; n < signal.length; n++) {
            e[n] = error(signal, n);
        }
        return e;
    }

    private double error(double[] signal, int n) {
        double sum = 0;
        for (int k = Math.min(n, coefficients.length - 1); k >= 0; k--) {
            sum += coefficients[k] * signal[n - k];
        }
        return sum;
    }

    /** Four sums at once need not wait for each other, and each sample is fetched once for all four. */
    private void fourErrors(double[] signal, int n, double[] e) {
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        int oldest = n - coefficients.length + 1;
        double first = signal[oldest];
        double second = signal[oldest + 1];
        double third = signal[oldest + 2];
        for (int k = coefficients.length - 1; k >= 0; k--) {
            double coefficient = coefficients[k];
            double fourth = signal[n + 3 - k];
            a += coefficient * first;
            b += coefficient * second;
            c += coefficient * third;
            d += coefficient * fourth;
            first = second;
            second = third;
            third = fourth;
        }
        e[n] = a;
        e[n + 1] = b;
        e[n + 2] = c;
        e[n + 3] = d;
    }
}
