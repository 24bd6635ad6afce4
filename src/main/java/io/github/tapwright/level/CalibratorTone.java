package io.github.tapwright.level;

/**
 * What a sound calibrator promises. Source of the limits: [IEC60942], class 1; the usual levels of 94 and 114 dB
 * and frequencies of 1 kHz and 250 Hz are common practice, no source.
 *
 * @param levelDb sound pressure level the calibrator makes at the microphone, dB SPL, between 70 and 140
 * @param levelToleranceDb how far the calibrator may be off, dB, greater than 0
 */
public record CalibratorTone(double levelDb, double levelToleranceDb) {

    private static final double CLASS_1_TOLERANCE_DB = 0.25;

    /** Refuses levels no calibrator makes. */
    public CalibratorTone {
        if (!(levelDb >= 70) || !(levelDb <= 140)) {
            throw new IllegalArgumentException("a calibrator makes 70 to 140 dB, usually 94 or 114, not " + levelDb);
        }
        if (!(levelToleranceDb > 0) || Double.isInfinite(levelToleranceDb)) {
            throw new IllegalArgumentException("the tolerance of a calibrator must be greater than 0 dB");
        }
    }

    /**
     * A calibrator of class 1, good for ±0.25 dB.
     *
     * @param levelDb for example 94 or 114
     * @return the tone
     */
    public static CalibratorTone classOne(double levelDb) {
        return new CalibratorTone(levelDb, CLASS_1_TOLERANCE_DB);
    }
}
