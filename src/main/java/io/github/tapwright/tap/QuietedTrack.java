package io.github.tapwright.tap;

import io.github.tapwright.statistics.Median;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * A track with the mains hum taken out, and how loud its quiet moments are.
 *
 * <p>The quieted signal serves to find and judge strikes only; the fit gets the original samples and
 * models the hum itself.
 */
final class QuietedTrack {

    private static final double BLOCK_SECONDS = 0.1;
    private static final double SHORT_BLOCK_SECONDS = 0.03;
    private static final double QUIET_QUANTILE = 0.1;

    private final TapTrack track;
    private final double[] quieted;
    private final BandPower bandPower;
    private final double noiseBandPower;
    private final double noiseMeanSquare;

    QuietedTrack(TapTrack track, double[] quieted, TapSettings settings) {
        this.track = track;
        this.quieted = quieted;
        int block = (int) Math.round(BLOCK_SECONDS * rateHz());
        this.bandPower = new BandPower(block, rateHz(), settings.lowHz(), settings.highHz());
        this.noiseBandPower = quietest(block, from -> bandPower.at(quieted, from));
        int shortBlock = (int) Math.round(SHORT_BLOCK_SECONDS * rateHz());
        this.noiseMeanSquare = quietest(shortBlock, from -> meanSquare(from, from + shortBlock));
    }

    private double quietest(int block, IntToDoubleFunction power) {
        int hop = Math.max(1, block / 2);
        int count = Math.max(1, (quieted.length - block) / hop + 1);
        double[] powers = new double[count];
        for (int i = 0; i < count; i++) {
            powers[i] = power.applyAsDouble(i * hop);
        }
        double[] sounding = Arrays.stream(powers).filter(p -> p > 0).toArray();
        return sounding.length == 0 ? 0 : Median.quantile(sounding, QUIET_QUANTILE);
    }

    double rateHz() {
        return track.decimatedRateHz();
    }

    PeakFrames peaks() {
        return track.peaks();
    }

    double endSeconds() {
        return (quieted.length - 1) / rateHz() - track.filterReachSeconds();
    }

    double noiseMeanSquare() {
        return noiseMeanSquare;
    }

    /** Power of the first 0.1 s from {@code startSeconds} over the quiet moments', in the band, dB. */
    double snrDb(double startSeconds) {
        double here = bandPower.at(quieted, (int) Math.round(startSeconds * rateHz()));
        return 10 * Math.log10(Math.max(1e-30, here) / Math.max(1e-20, noiseBandPower));
    }

    double meanSquare(double fromSeconds, double toSeconds) {
        return meanSquare((int) Math.round(fromSeconds * rateHz()), (int) Math.round(toSeconds * rateHz()));
    }

    private double meanSquare(int from, int to) {
        double sum = 0;
        int count = 0;
        for (int n = Math.max(0, from); n < Math.min(quieted.length, to); n++) {
            sum += quieted[n] * quieted[n];
            count++;
        }
        return count == 0 ? 0 : sum / count;
    }

    double[] original(double startSeconds, int length) {
        int from = (int) Math.round(startSeconds * rateHz());
        return Arrays.copyOfRange(track.signal(), from, from + length);
    }

    /** Takes steady tones out, their strength fitted every few seconds outside the taps. */
    static double[] withoutTones(TapTrack track, List<Double> tonesHz, List<Contact> contacts) {
        double[] out = track.signal().clone();
        if (tonesHz.isEmpty()) {
            return out;
        }
        boolean[] tap = TapMask.of(track, contacts);
        double rate = track.decimatedRateHz();
        int chunk = (int) (4 * rate);
        for (int from = 0; from < out.length; from += chunk) {
            int to = out.length - from < 2 * chunk ? out.length : from + chunk;
            for (double tone : tonesHz) {
                subtractTone(out, tap, 2 * Math.PI * tone / rate, from, to);
            }
            if (to == out.length) {
                break;
            }
        }
        return out;
    }

    private static void subtractTone(double[] x, boolean[] tap, double radians, int from, int to) {
        double re = 0;
        double im = 0;
        int count = 0;
        for (int n = from; n < to; n++) {
            if (!tap[n]) {
                re += x[n] * Math.cos(radians * n);
                im += x[n] * Math.sin(radians * n);
                count++;
            }
        }
        if (count == 0) {
            return;
        }
        for (int n = from; n < to; n++) {
            x[n] -= 2 * (re * Math.cos(radians * n) + im * Math.sin(radians * n)) / count;
        }
    }
}
