package io.github.tapwright.chart;

/**
 * A resonance marked on a curve.
 *
 * @param frequencyHz where
 * @param name its name; empty text if it has none
 * @param figure frequency and uncertainty as the reader sees them, such as "98.42 ± 0.06 Hz"
 */
public record Mark(double frequencyHz, String name, String figure) {}
