package io.github.tapwright.statistics;

/**
 * A standard deviation with its own uncertainty.
 *
 * @param standardDeviation not negative, in the values' unit
 * @param degreesOfFreedom how much is known about it, by Satterthwaite's rule where it is put together; above 0
 * @param interval95 of the true standard deviation, same unit
 */
public record Scatter(double standardDeviation, double degreesOfFreedom, Interval interval95) {}
