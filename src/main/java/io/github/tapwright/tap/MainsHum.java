package io.github.tapwright.tap;

import io.github.tapwright.signal.Fourier;
import io.github.tapwright.statistics.Median;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Steady tones of the mains, 50 or 60 Hz and multiples, in what lies between the taps.
 */
final class MainsHum {

    private static final double LONGEST_SECONDS = 60;
    private static final double SHORTEST_QUIET_SECONDS = 0.7;
    private static final double PROMINENCE = 30;
    private static final double MAINS_TOLERANCE = 0.006;

    private MainsHum() {}

    /** Frequencies of the mains tones that stand out, lowest first; empty if none or too little quiet. */
    static List<Double> find(TapTrack track, List<Contact> contacts, double highHz) {
        double rate = track.decimatedRateHz();
        int length = (int) Math.min(track.signal().length, LONGEST_SECONDS * rate);
        double[] quiet = Arrays.copyOf(track.signal(), length);
        double masked = 0;
        for (Contact c : contacts) {
            int from = (int) Math.max(0, (c.onsetSeconds() - 0.01) * rate);
            int to = (int) Math.min(length, (c.onsetSeconds() + 0.6) * rate);
            if (from < to) {
                Arrays.fill(quiet, from, to, 0);
                masked += to - from;
            }
        }
        if (length - masked < SHORTEST_QUIET_SECONDS * rate) {
            return List.of();
        }
        double[] power = power(quiet);
        double binHz = rate / (2.0 * (power.length - 1));
        List<Double> fifty = tones(power, binHz, 50, highHz);
        List<Double> sixty = tones(power, binHz, 60, highHz);
        return fifty.size() >= sixty.size() ? fifty : sixty;
    }

    private static double[] power(double[] signal) {
        int size = Integer.highestOneBit(Math.max(2, signal.length - 1)) * 2;
        return new Fourier(size).power(Arrays.copyOf(signal, size));
    }

    /** Multiples of one mains frequency that stand out of their surroundings. */
    private static List<Double> tones(double[] power, double binHz, double mainsHz, double highHz) {
        double strongest = 0;
        double fundamental = mainsHz;
        List<Integer> multiples = new ArrayList<>();
        for (int k = 1; k * mainsHz <= 1.1 * highHz; k++) {
            double reachHz = Math.max(2 * binHz, k * mainsHz * MAINS_TOLERANCE);
            int peak = largest(power, (k * mainsHz - reachHz) / binHz, (k * mainsHz + reachHz) / binHz);
            double around = Median.of(Arrays.copyOfRange(
                    power,
                    Math.max(0, peak - (int) Math.ceil(8 / binHz)),
                    Math.min(power.length, peak + (int) Math.ceil(8 / binHz))));
            double prominence = power[peak] / Math.max(around, 1e-300);
            if (prominence > PROMINENCE) {
                multiples.add(k);
                if (prominence * k > strongest) { // a high multiple tells the fundamental best
                    strongest = prominence * k;
                    fundamental = interpolated(power, peak) * binHz / k;
                }
            }
        }
        double exact = fundamental;
        return multiples.size() < 2
                ? List.of()
                : multiples.stream().map(k -> k * exact).toList();
    }

    private static int largest(double[] power, double from, double to) {
        int best = (int) Math.max(1, Math.floor(from));
        for (int k = best; k <= Math.min(power.length - 2, Math.ceil(to)); k++) {
            best = power[k] > power[best] ? k : best;
        }
        return best;
    }

    private static double interpolated(double[] power, int k) {
        double a = Math.log(power[k - 1] + 1e-300);
        double b = Math.log(power[k] + 1e-300);
        double c = Math.log(power[k + 1] + 1e-300);
        double curvature = a - 2 * b + c;
        return curvature < 0 ? k + 0.5 * (a - c) / curvature : k;
    }
}
