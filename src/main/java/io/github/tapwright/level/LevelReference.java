package io.github.tapwright.level;

/**
 * What a level is measured against.
 *
 * <p>A recording knows only its own full scale; sound pressure needs a {@link Calibration}.
 */
public sealed interface LevelReference permits FullScale, Calibration {

    /**
     * The level of a signal whose mean square is 1, that is of a constant at full scale.
     *
     * @return dB re this reference: 0 for {@link FullScale}
     */
    double fullScaleLevelDb();

    /**
     * How the unit of a level with this reference is written.
     *
     * @return for example "dB re 20 µPa"
     */
    String unit();

    /**
     * The level of a signal: 10 lg(mean square) + {@link #fullScaleLevelDb()}.
     *
     * @param meanSquare of samples re full scale, greater than 0
     * @return the level
     * @throws IllegalArgumentException if the mean square is 0: silence has no level
     */
    default Level levelOf(double meanSquare) {
        if (!(meanSquare > 0)) {
            throw new IllegalArgumentException("silence has no level");
        }
        return new Level(10 * Math.log10(meanSquare) + fullScaleLevelDb(), this);
    }
}
