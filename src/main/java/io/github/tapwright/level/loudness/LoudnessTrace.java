package io.github.tapwright.level.loudness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Loudness against time, every 2 ms, from the smoothed band intensities of every 0.5 ms.
 *
 * <p>Per frame: levels, cores, decay of each core, pattern, total, temporal weighting; every fourth result is
 * kept. A frame's cores must know the next frame's, and so must its total, so results come two frames late.
 */
final class LoudnessTrace {

    private static final double REFERENCE_INTENSITY = 4e-10; // (20 µPa)²
    private static final double FLOOR_INTENSITY = 1e-12; // keeps silence finite
    private static final int FRAMES_PER_VALUE = 4;

    private final CoreLoudness coreLoudness;
    private final LoudnessPattern pattern = new LoudnessPattern();
    private final List<FrameInterpolation> decays = new ArrayList<>();
    private final List<FrameInterpolation> weighting = new ArrayList<>(); // none before the first total
    private double[] values = new double[1024];
    private int count;
    private int frames;
    private boolean applicable = true;

    LoudnessTrace(SoundField field) {
        this.coreLoudness = new CoreLoudness(field);
    }

    /** Takes the intensity, Pa², of each of the 28 bands at the next frame. */
    void take(double[] intensities) {
        double[] levelsDb = new double[intensities.length];
        for (int band = 0; band < levelsDb.length; band++) {
            levelsDb[band] = levelDb(intensities[band]);
        }
        applicable &= CoreLoudness.applicable(levelsDb);
        advance(coreLoudness.of(levelsDb));
    }

    /** Ends the sound: the cores and then the total fall to nothing. */
    void finish() {
        advance(new double[CoreLoudness.BANDS + 1]);
        takeTotal(0);
    }

    /** Loudness every 2 ms, sone. */
    double[] values() {
        return Arrays.copyOf(values, count);
    }

    /** Whether the low bands always stayed where the method holds. */
    boolean applicable() {
        return applicable;
    }

    static double levelDb(double intensity) {
        return 10 * Math.log10((intensity + FLOOR_INTENSITY) / REFERENCE_INTENSITY);
    }

    private void advance(double[] core) {
        if (decays.isEmpty()) {
            for (int band = 0; band < CoreLoudness.BANDS; band++) {
                NonlinearDecay decay = new NonlinearDecay(FrameInterpolation.STEP_SECONDS);
                decays.add(new FrameInterpolation(decay::step, core[band]));
            }
            return;
        }
        double[] decayed = new double[CoreLoudness.BANDS + 1];
        for (int band = 0; band < CoreLoudness.BANDS; band++) {
            decayed[band] = decays.get(band).advance(core[band]);
        }
        pattern.trace(decayed);
        takeTotal(pattern.totalSone());
    }

    private void takeTotal(double totalSone) {
        if (weighting.isEmpty()) {
            TemporalWeighting weight = new TemporalWeighting(FrameInterpolation.STEP_SECONDS);
            weighting.add(new FrameInterpolation(weight::step, totalSone));
            return;
        }
        double weighted = weighting.get(0).advance(totalSone);
        if (frames++ % FRAMES_PER_VALUE == 0) {
            keep(weighted);
        }
    }

    private void keep(double value) {
        if (count == values.length) {
            values = Arrays.copyOf(values, 2 * count);
        }
        values[count++] = value;
    }
}
