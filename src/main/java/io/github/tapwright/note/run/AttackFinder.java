package io.github.tapwright.note.run;

import io.github.tapwright.statistics.Median;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds where notes begin in a recording of many.
 *
 * <p>A pluck is bright for a moment: the level of the differenced signal x[n] − x[n−1], in frames of 4 ms, must rise by
 * {@value #RISE_DB} dB over everything of the 60 ms before, and what follows must not be much fainter than the notes of
 * this recording usually are. Attacks closer than {@value #CLOSEST_SECONDS} s count as one. Derived here.
 */
public final class AttackFinder {

    private static final double FRAME_SECONDS = 0.004;
    private static final int FRAMES_BEFORE = 15;
    private static final double RISE_DB = 8;
    private static final double CLOSEST_SECONDS = 0.18;
    private static final double BODY_SECONDS = 0.1;
    private static final double FAINTEST_DB = 30;
    private static final double ABOVE_ROOM_DB = 12;
    private static final double ROOM_QUANTILE = 0.05;
    private static final double SILENCE = 1e-9;

    private final double[] brightDb;
    private final double[] levelDb;
    private final int framesOfNote;
    private final double quietestDb;

    private AttackFinder(double[] signal, double rateHz) {
        int frame = (int) Math.max(1, Math.round(FRAME_SECONDS * rateHz));
        brightDb = new double[signal.length / frame];
        levelDb = new double[brightDb.length];
        framesOfNote = (int) Math.round(BODY_SECONDS / FRAME_SECONDS);
        for (int f = 0; f < brightDb.length; f++) {
            double bright = 0;
            double all = 0;
            for (int n = Math.max(1, f * frame); n < (f + 1) * frame; n++) {
                double difference = signal[n] - signal[n - 1];
                bright += difference * difference;
                all += signal[n] * signal[n];
            }
            brightDb[f] = 20 * Math.log10(Math.sqrt(bright / frame) + SILENCE);
            levelDb[f] = 20 * Math.log10(Math.sqrt(all / frame) + SILENCE);
        }
        quietestDb = brightDb.length == 0 ? 0 : Median.quantile(brightDb, ROOM_QUANTILE);
    }

    /**
     * Finds the attacks.
     *
     * @param signal samples, any level; at 8,000 samples a second or more
     * @param rateHz samples per second
     * @return their times in seconds from the start, in order; empty if nothing was plucked
     */
    public static List<Double> find(double[] signal, double rateHz) {
        AttackFinder finder = new AttackFinder(signal, rateHz);
        double frameSeconds = Math.round(FRAME_SECONDS * rateHz) / rateHz;
        return finder.loudEnough(finder.rises()).stream()
                .map(f -> f * frameSeconds)
                .toList();
    }

    /** Frames that rise over all of the moment before, the steepest within the closest distance of two notes. */
    private List<Integer> rises() {
        List<Integer> rises = new ArrayList<>();
        int apart = (int) Math.round(CLOSEST_SECONDS / FRAME_SECONDS);
        for (int f = 0; f < brightDb.length; f++) {
            double rise = riseDb(f);
            if (rise < RISE_DB) {
                continue;
            }
            int last = rises.size() - 1;
            if (rises.isEmpty() || f - rises.get(last) > apart) {
                rises.add(f);
            } else if (rise > riseDb(rises.get(last)) + RISE_DB && bodyDb(f) > bodyDb(rises.get(last))) {
                // The finger's noise on the string came first; the pluck itself is what counts.
                rises.set(last, f);
            }
        }
        return rises;
    }

    private double riseDb(int f) {
        // Nothing was recorded before the first frame; it must stand out of the quietest moments instead.
        double before = f == 0 ? quietestDb : Double.NEGATIVE_INFINITY;
        for (int i = Math.max(0, f - FRAMES_BEFORE); i < f; i++) {
            before = Math.max(before, brightDb[i]);
        }
        return brightDb[f] - before;
    }

    private double bodyDb(int f) {
        return Median.of(Arrays.copyOfRange(levelDb, f, Math.min(levelDb.length, f + framesOfNote)));
    }

    private List<Integer> loudEnough(List<Integer> rises) {
        if (rises.isEmpty()) {
            return rises;
        }
        double usual = Median.of(rises.stream().mapToDouble(this::bodyDb).toArray());
        double room = Median.quantile(levelDb.clone(), ROOM_QUANTILE);
        return rises.stream()
                .filter(f -> bodyDb(f) > usual - FAINTEST_DB && bodyDb(f) > room + ABOVE_ROOM_DB)
                .toList();
    }
}
