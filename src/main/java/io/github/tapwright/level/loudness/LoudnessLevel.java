package io.github.tapwright.level.loudness;

/**
 * From loudness to loudness level: LN = 40 + 10 lb N for N ≥ 1 sone, else 40·(N + 0.0005)^0.35, at least 3 phon.
 *
 * <p>Source: [ISO532-1]; the 0.0005 from memory, to be verified.
 */
final class LoudnessLevel {

    private static final double LEAST_PHON = 3;

    private LoudnessLevel() {}

    static double phon(double sone) {
        double phon = sone >= 1 ? 40 + 10 * Math.log(sone) / Math.log(2) : 40 * Math.pow(sone + 0.0005, 0.35);
        return Math.max(LEAST_PHON, phon);
    }
}
