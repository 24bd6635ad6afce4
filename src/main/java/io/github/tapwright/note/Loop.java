package io.github.tapwright.note;

import java.util.OptionalInt;

/**
 * Finds a loop at the end of a recording: the same samples over again, bit for bit or nearly.
 *
 * <p>A string never repeats itself so well; its decay and the stretch of its partials differ by 40 dB more within
 * {@value #SHORTEST_SECONDS} s. The end of the recording is compared with itself shifted by every period.
 */
final class Loop {

    private static final double SHORTEST_SECONDS = 0.04;
    private static final double PROBE_SECONDS = 0.004;
    private static final double WINDOW_SECONDS = 0.03;
    private static final double ALIKE = 1e-7;

    private Loop() {}

    /**
     * Looks for a loop.
     *
     * @param tail the end of the recording at its own rate
     * @param rateHz samples per second
     * @return how many samples before the end the second pass begins, empty if there is no loop
     */
    static OptionalInt find(double[] tail, double rateHz) {
        int probe = (int) (PROBE_SECONDS * rateHz);
        int window = (int) (WINDOW_SECONDS * rateHz);
        int end = tail.length;
        double inWindow = energy(tail, Math.max(0, end - window), end);
        if (inWindow == 0) {
            return OptionalInt.empty();
        }
        double inProbe = energy(tail, Math.max(0, end - probe), end);
        for (int period = (int) (SHORTEST_SECONDS * rateHz); period + window <= end; period++) {
            if (alike(tail, end - probe, end, period, inProbe) && alike(tail, end - window, end, period, inWindow)) {
                int start = end - window;
                while (start - period - probe >= 0
                        && alike(tail, start - probe, start, period, energy(tail, start - probe, start))) {
                    start -= probe;
                }
                return OptionalInt.of(end - start);
            }
        }
        return OptionalInt.empty();
    }

    private static boolean alike(double[] x, int from, int to, int period, double energy) {
        double allowed = ALIKE * energy;
        double sum = 0;
        for (int n = from; n < to && sum <= allowed; n++) {
            double difference = x[n] - x[n - period];
            sum += difference * difference;
        }
        return sum <= allowed;
    }

    private static double energy(double[] x, int from, int to) {
        double sum = 0;
        for (int n = from; n < to; n++) {
            sum += x[n] * x[n];
        }
        return sum;
    }
}
