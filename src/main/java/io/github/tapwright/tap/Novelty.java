package io.github.tapwright.tap;

import io.github.tapwright.signal.LinearPrediction;
import io.github.tapwright.signal.RingingPrediction;
import java.util.Arrays;
import java.util.List;

/**
 * How much of a signal, moment by moment, its own past does not foretell.
 *
 * <p>The mean square of the linear prediction error over 3 ms. Ringing and hum are foretold and vanish;
 * a contact stands out however loud the ringing of the tap before it still is.
 */
final class Novelty {

    private static final int ORDER = 32;
    private static final double WINDOW_SECONDS = 0.003;

    private final double[] power;
    private final int halfWindow;

    private Novelty(double[] power, int halfWindow) {
        this.power = power;
        this.halfWindow = halfWindow;
    }

    /** Learns from the whole signal, not knowing yet where the taps are. */
    static Novelty ofWhole(double[] signal, double rateHz) {
        double[] r = new double[ORDER + 1];
        LinearPrediction.accumulate(signal, 0, signal.length, r);
        return of(signal, rateHz, r);
    }

    /** Learns from the decays alone, which sharpens what stands out of them. */
    static Novelty ofDecays(double[] signal, double rateHz, List<Contact> contacts) {
        double[] r = new double[ORDER + 1];
        for (int i = 0; i < contacts.size(); i++) {
            double start = contacts.get(i).decayStartSeconds();
            double end = start + 0.3;
            if (i + 1 < contacts.size()) {
                end = Math.min(end, contacts.get(i + 1).onsetSeconds() - 0.005);
            }
            int from = (int) (start * rateHz);
            int to = (int) Math.min(signal.length, end * rateHz);
            if (to - from > 2 * ORDER) {
                LinearPrediction.accumulate(signal, from, to, r);
            }
        }
        return r[0] > 0 ? of(signal, rateHz, r) : ofWhole(signal, rateHz);
    }

    private static Novelty of(double[] signal, double rateHz, double[] autocorrelation) {
        int half = halfWindow(rateHz);
        if (autocorrelation[0] <= 0) {
            return new Novelty(new double[signal.length], half);
        }
        return new Novelty(
                smoothedSquare(LinearPrediction.learn(autocorrelation).error(signal), half), half);
    }

    /** What a predictor learnt from free ringing alone leaves unexplained. */
    static Novelty leftBy(RingingPrediction prediction, double[] signal, double rateHz) {
        int half = halfWindow(rateHz);
        double[] error = prediction.isSilent() ? signal : prediction.learn().error(signal);
        return new Novelty(smoothedSquare(error, half), half);
    }

    private static int halfWindow(double rateHz) {
        return (int) Math.max(1, Math.round(WINDOW_SECONDS * rateHz / 2));
    }

    private static double[] smoothedSquare(double[] e, int half) {
        double[] cumulative = new double[e.length + 1];
        for (int n = 0; n < e.length; n++) {
            cumulative[n + 1] = cumulative[n] + e[n] * e[n];
        }
        double[] power = new double[e.length];
        for (int n = 0; n < e.length; n++) {
            int from = Math.max(0, n - half);
            int to = Math.min(e.length, n + half + 1);
            power[n] = Math.max(0, cumulative[to] - cumulative[from]) / (2 * half + 1);
        }
        return power;
    }

    double at(int n) {
        return power[n];
    }

    int length() {
        return power.length;
    }

    int halfWindow() {
        return halfWindow;
    }

    /** Copy of a stretch, for medians. */
    double[] between(int from, int to) {
        int a = Math.max(0, from);
        return Arrays.copyOfRange(power, a, Math.max(a, Math.min(power.length, to)));
    }
}
