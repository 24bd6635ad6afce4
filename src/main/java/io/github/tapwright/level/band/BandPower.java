package io.github.tapwright.level.band;

/**
 * The mean square of a signal in one band.
 *
 * @param band which band
 * @param meanSquare of samples re full scale, 0 or more
 */
public record BandPower(Band band, double meanSquare) {}
