package io.github.tapwright.level;

import io.github.tapwright.level.band.Band;

/**
 * The level of a channel in one band.
 *
 * @param band which band
 * @param level over the whole recording
 */
public record BandLevel(Band band, Level level) {}
