package io.github.tapwright.level;

import io.github.tapwright.level.loudness.SoundField;

/**
 * How levels are measured; kept with every result.
 *
 * @param reference what the samples mean: full scale alone, or sound pressure by a calibration
 * @param field how the sound reached the microphone, for loudness in sone
 */
public record LevelSettings(LevelReference reference, SoundField field) {

    /** Relative levels, without a calibration. */
    public static final LevelSettings RELATIVE = new LevelSettings(new FullScale(), SoundField.FREE);

    /**
     * Levels in dB SPL, free field.
     *
     * @param calibration of the same microphone, input and gain
     * @return settings
     */
    public static LevelSettings calibrated(Calibration calibration) {
        return new LevelSettings(calibration, SoundField.FREE);
    }
}
