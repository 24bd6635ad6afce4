package io.github.tapwright.statistics;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/** How well a standard deviation of few figures is known. */
public final class DeviationInterval {

    private DeviationInterval() {}

    /**
     * Where the true standard deviation lies, 19 times of 20: s·√(ν/χ²_0.975) to s·√(ν/χ²_0.025), for figures of normal scatter.
     *
     * @param deviation s, not negative
     * @param degreesOfFreedom ν, above 0
     * @return in the unit of s
     */
    public static Interval of95(double deviation, double degreesOfFreedom) {
        ChiSquaredDistribution chiSquared = new ChiSquaredDistribution(degreesOfFreedom);
        return new Interval(
                deviation * Math.sqrt(degreesOfFreedom / chiSquared.inverseCumulativeProbability(0.975)),
                deviation * Math.sqrt(degreesOfFreedom / chiSquared.inverseCumulativeProbability(0.025)));
    }
}
