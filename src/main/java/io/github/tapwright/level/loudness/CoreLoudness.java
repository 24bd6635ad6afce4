package io.github.tapwright.level.loudness;

import java.util.Arrays;

/**
 * From third-octave levels to the specific loudness each critical band makes by itself.
 *
 * <p>The 11 bands up to 250 Hz are corrected for equal loudness and added to three critical bands; the others
 * count as one each. Then per band, with E the level after the ear's transmission and the bandwidth correction
 * and T the threshold: N' = 0.0635·10^(0.025·T)·((1 − s + s·10^((E−T)/10))^(1/4) − 1), s = 1/4, where E is above
 * the threshold. Source: [ISO532-1], annex A.
 */
final class CoreLoudness {

    /** Bands with a core of their own; one more follows that only falls off. */
    static final int BANDS = 20;

    /** Highest level of the bands up to 250 Hz the method is made for, dB. */
    static final double HIGHEST_LOW_BAND_DB = 120;

    private static final int LOW_BANDS = 11;
    private static final int[] GROUP_ENDS = {6, 9, LOW_BANDS};
    private static final double THRESHOLD_FACTOR = 0.25;

    private final double[] transmissionDb = new double[BANDS];
    private final double[] scale = new double[BANDS];

    CoreLoudness(SoundField field) {
        for (int i = 0; i < BANDS; i++) {
            transmissionDb[i] = -LoudnessTables.EAR_TRANSMISSION_DB[i]
                    + (field == SoundField.DIFFUSE ? LoudnessTables.DIFFUSE_FIELD_DB[i] : 0);
            scale[i] = 0.0635 * Math.pow(10, 0.025 * LoudnessTables.THRESHOLD_DB[i]);
        }
    }

    /** Whether the low bands stay where the method holds. */
    static boolean applicable(double[] levelsDb) {
        return Arrays.stream(levelsDb, 0, LOW_BANDS).allMatch(level -> level <= HIGHEST_LOW_BAND_DB);
    }

    /** Core loudness, sone per Bark, shape [21] with the last 0, of 28 levels in dB SPL. */
    double[] of(double[] levelsDb) {
        double[] core = new double[BANDS + 1];
        int band = 0;
        for (int group = 0; group < GROUP_ENDS.length; group++) {
            double intensity = 0;
            for (; band < GROUP_ENDS[group]; band++) {
                intensity += correctedIntensity(band, levelsDb[band]);
            }
            core[group] = core(group, 10 * Math.log10(intensity));
        }
        for (int i = GROUP_ENDS.length; i < BANDS; i++) {
            core[i] = core(i, levelsDb[i + LOW_BANDS - GROUP_ENDS.length]);
        }
        core[0] *= Math.min(1, 0.4 + 0.32 * Math.pow(core[0], 0.2)); // the lowest band is cut off below
        return core;
    }

    private static double correctedIntensity(int band, double levelDb) {
        int range = 0;
        while (range < LoudnessTables.LOW_BAND_RANGE_DB.length - 1
                && levelDb
                        > LoudnessTables.LOW_BAND_RANGE_DB[range]
                                - LoudnessTables.LOW_BAND_CORRECTION_DB[range][band]) {
            range++;
        }
        return power(levelDb + LoudnessTables.LOW_BAND_CORRECTION_DB[range][band]);
    }

    private double core(int i, double levelDb) {
        double excitationDb = levelDb + transmissionDb[i];
        double thresholdDb = LoudnessTables.THRESHOLD_DB[i];
        if (excitationDb <= thresholdDb) {
            return 0;
        }
        double ratio = power(excitationDb - LoudnessTables.BANDWIDTH_CORRECTION_DB[i] - thresholdDb);
        double fourthRoot = Math.sqrt(Math.sqrt(1 - THRESHOLD_FACTOR + THRESHOLD_FACTOR * ratio));
        return Math.max(0, scale[i] * (fourthRoot - 1));
    }

    private static double power(double decibels) {
        return Math.exp(decibels * (Math.log(10) / 10));
    }
}
