package io.github.tapwright.tap;

import io.github.tapwright.signal.Fourier;
import io.github.tapwright.statistics.Median;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds the mains, 50 or 60 Hz with multiples, in what lies between the taps.
 *
 * <p>One frequency must explain all multiples at once, at least two of them, and each must be as strong at
 * the end as at the beginning: a string's partials may lie on multiples of 50 Hz, but they die away.
 */
final class MainsHum {

    private static final double LONGEST_SECONDS = 60;
    private static final double SHORTEST_QUIET_SECONDS = 0.7;
    private static final double PROMINENCE = 30;
    private static final double MAINS_TOLERANCE = 0.006;
    private static final int STEPS = 60;
    private static final double STEADY_DB = 6;
    private static final int FEWEST_MULTIPLES = 2;

    private final double[] quiet;
    private final double[] power;
    private final double rateHz;
    private final double binHz;
    private final double highHz;
    private final int sounding;

    private MainsHum(double[] quiet, double rateHz, double highHz) {
        this.quiet = quiet;
        this.rateHz = rateHz;
        this.highHz = highHz;
        int size = Integer.highestOneBit(Math.max(2, quiet.length - 1)) * 2;
        this.power = new Fourier(size).power(Arrays.copyOf(quiet, size));
        this.binHz = rateHz / size;
        this.sounding = (int) Arrays.stream(quiet).filter(x -> x != 0).count();
    }

    /** The mains tones that stand out; none if there are none or too little quiet. */
    static Hum find(TapTrack track, List<Contact> contacts, double highHz) {
        double rate = track.decimatedRateHz();
        boolean[] tap = TapMask.of(track, contacts);
        double[] quiet = Arrays.copyOf(track.signal(), (int) Math.min(tap.length, LONGEST_SECONDS * rate));
        int masked = 0;
        for (int n = 0; n < quiet.length; n++) {
            if (tap[n]) {
                quiet[n] = 0;
                masked++;
            }
        }
        if (quiet.length - masked < SHORTEST_QUIET_SECONDS * rate) {
            return Hum.NONE;
        }
        MainsHum search = new MainsHum(quiet, rate, highHz);
        Hum fifty = search.near(50);
        Hum sixty = search.near(60);
        return fifty.multiples().size() >= sixty.multiples().size() ? fifty : sixty;
    }

    private Hum near(double mainsHz) {
        double reachHz = MAINS_TOLERANCE * mainsHz;
        int most = (int) (1.1 * highHz / (mainsHz + reachHz));
        double[] around = IntStream.rangeClosed(0, most)
                .mapToDouble(k -> around(k * mainsHz))
                .toArray();
        double roughHz = best(mainsHz, reachHz, STEPS, around);
        // The line of the highest multiple is a few bins wide, however long the recording: steps of a quarter of a bin
        // there.
        double stepHz = reachHz / STEPS;
        double bestHz = best(roughHz, stepHz, Math.max(1, (int) Math.ceil(4 * stepHz * most / binHz)), around);
        List<Integer> multiples = new ArrayList<>();
        for (int k = 1; k <= most; k++) {
            if (power(k * bestHz) > PROMINENCE * around[k] && isSteady(k * bestHz)) {
                multiples.add(k);
            }
        }
        return multiples.size() < FEWEST_MULTIPLES ? Hum.NONE : new Hum(bestHz, multiples);
    }

    /** The frequency whose multiples stand out most, among so many steps to either side. */
    private double best(double middleHz, double reachHz, int steps, double[] around) {
        double bestHz = middleHz;
        double bestSum = -1;
        for (int i = -steps; i <= steps; i++) {
            double hz = middleHz + reachHz * i / steps;
            double sum = prominence(hz, around);
            if (sum > bestSum) {
                bestSum = sum;
                bestHz = hz;
            }
        }
        return bestHz;
    }

    private double prominence(double hz, double[] around) {
        double sum = 0;
        for (int k = 1; k < around.length; k++) {
            sum += Math.log1p(power(k * hz) / around[k]);
        }
        return sum;
    }

    /** Median power within 8 Hz of a frequency. */
    private double around(double hz) {
        int k = (int) Math.round(hz / binHz);
        int reach = (int) Math.ceil(8 / binHz);
        int from = Math.max(0, Math.min(power.length - 1, k - reach));
        return Math.max(Median.of(Arrays.copyOfRange(power, from, Math.min(power.length, k + reach))), 1e-300);
    }

    /** Power at a frequency; between bins by a parabola through the logarithms. */
    private double power(double hz) {
        int k = (int) Math.round(hz / binHz);
        if (k < 2 || k + 2 >= power.length) {
            return 0;
        }
        double x = hz / binHz - k;
        double a = Math.log(power[k - 1] + 1e-300);
        double b = Math.log(power[k] + 1e-300);
        double c = Math.log(power[k + 1] + 1e-300);
        return Math.exp(b + 0.5 * (c - a) * x + 0.5 * (a - 2 * b + c) * x * x);
    }

    /** Whether a tone is as strong in the last third of the quiet as in the first. */
    private boolean isSteady(double hz) {
        int third = sounding / 3;
        double first = strength(hz, 0, third);
        double last = strength(hz, sounding - third, sounding);
        return Math.abs(10 * Math.log10(Math.max(first, 1e-300) / Math.max(last, 1e-300))) < STEADY_DB;
    }

    /** Mean power of a tone between two counts of unmasked samples, its phase kept in step with time. */
    private double strength(double hz, int from, int to) {
        double radians = 2 * Math.PI * hz / rateHz;
        double re = 0;
        double im = 0;
        int seen = 0;
        for (int n = 0; n < quiet.length && seen < to; n++) {
            if (quiet[n] != 0) {
                if (seen >= from) {
                    re += quiet[n] * Math.cos(radians * n);
                    im += quiet[n] * Math.sin(radians * n);
                }
                seen++;
            }
        }
        double samples = Math.max(1, to - from);
        return (re * re + im * im) / (samples * samples);
    }
}
