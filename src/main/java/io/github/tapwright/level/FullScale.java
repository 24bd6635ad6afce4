package io.github.tapwright.level;

/**
 * Levels re full scale: relative, good for comparing recordings made with one microphone and one gain.
 *
 * <p>0 dB is a mean square of 1: a sine that just reaches full scale reads −3.01 dB, its peak 0 dB, as in
 * [BS1770].
 */
public record FullScale() implements LevelReference {

    @Override
    public double fullScaleLevelDb() {
        return 0;
    }

    @Override
    public String unit() {
        return "dB re full scale";
    }
}
