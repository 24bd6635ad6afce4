package io.github.tapwright.level;

/**
 * A level together with what it is measured against.
 *
 * @param levelDb dB re {@code reference}, finite
 * @param reference full scale or sound pressure
 */
public record Level(double levelDb, LevelReference reference) {

    /** Refuses levels that are not numbers. */
    public Level {
        if (!Double.isFinite(levelDb)) {
            throw new IllegalArgumentException("a level must be a finite number, was " + levelDb);
        }
    }
}
