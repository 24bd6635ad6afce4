package io.github.tapwright.note;

import be.tarsos.dsp.pitch.McLeodPitchMethod;
import be.tarsos.dsp.pitch.PitchDetectionResult;
import be.tarsos.dsp.pitch.PitchDetector;
import be.tarsos.dsp.pitch.Yin;
import io.github.tapwright.signal.Decimator;
import io.github.tapwright.signal.GrowingSignal;
import io.github.tapwright.statistics.Median;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * First guesses of a pitch from the waveform: YIN and McLeod's method on several frames, the median of each.
 *
 * <p>Good to some cents when right; a guess may be an octave or a twelfth off, which the harmonic evidence
 * settles. Sources: [DeCheveigneKawahara2002], [McLeodWyvill2005].
 */
final class PitchDetectors {

    private static final int MOST_FRAMES = 12;
    private static final double HOP_SECONDS = 0.08;
    private static final double PERIODS = 2.6;

    /** Five samples and more for each period of the highest pitch; the work grows with the square of the rate. */
    private static final double ENOUGH_HZ = 8000;

    private static final double PASSED = 0.4;
    private static final int BLOCK = 8192;

    /**
     * The library's McLeod method gives up below 80 Hz of the rate it is told; told twice the rate, it answers with
     * twice the pitch and so reaches down to 40 Hz.
     */
    private static final int TOLD = 2;

    private PitchDetectors() {}

    /**
     * Guesses.
     *
     * @param signal samples
     * @param from first sample to look at
     * @param to one past the last
     * @param rateHz samples per second
     * @param lowestHz lowest pitch wanted
     * @return at most one guess of each method, Hz
     */
    static List<Double> guesses(double[] signal, int from, int to, double rateHz, double lowestHz) {
        int factor = (int) Math.max(1, Math.floor(rateHz / ENOUGH_HZ));
        double slowHz = rateHz / factor;
        int length = (int) Math.ceil(PERIODS * slowHz / lowestHz);
        int hop = (int) (HOP_SECONDS * slowHz);
        double[] slow = slower(signal, from, Math.min(to, from + factor * (length + MOST_FRAMES * hop)), factor);
        List<float[]> frames = frames(slow, length, hop);
        List<Double> guesses = new ArrayList<>();
        for (PitchDetector detector : List.of(
                new Yin((float) (TOLD * slowHz), length), new McLeodPitchMethod((float) (TOLD * slowHz), length))) {
            double[] heard = frames.stream()
                    .map(frame -> detector.getPitch(frame.clone()))
                    .filter(PitchDetectionResult::isPitched)
                    .mapToDouble(result -> result.getPitch() / TOLD)
                    .filter(hz -> hz > 0)
                    .toArray();
            if (heard.length > 0) {
                guesses.add(Median.of(heard));
            }
        }
        return guesses;
    }

    private static double[] slower(double[] signal, int from, int to, int factor) {
        if (factor == 1) {
            return Arrays.copyOfRange(signal, from, to);
        }
        Decimator decimator = new Decimator(1, factor, PASSED / factor);
        GrowingSignal slow = new GrowingSignal();
        for (int at = from; at < to; at += BLOCK) {
            int n = Math.min(BLOCK, to - at);
            double[] more = decimator.process(Arrays.copyOfRange(signal, at, at + n), n);
            slow.append(more, more.length);
        }
        double[] last = decimator.finish();
        slow.append(last, last.length);
        return slow.joined();
    }

    private static List<float[]> frames(double[] signal, int length, int hop) {
        List<float[]> frames = new ArrayList<>();
        for (int start = 0; start + length <= signal.length && frames.size() < MOST_FRAMES; start += hop) {
            float[] frame = new float[length];
            double peak = 1e-30;
            for (int i = 0; i < length; i++) {
                peak = Math.max(peak, Math.abs(signal[start + i]));
            }
            for (int i = 0; i < length; i++) {
                frame[i] = (float) (signal[start + i] / peak);
            }
            frames.add(frame);
        }
        return frames;
    }
}
