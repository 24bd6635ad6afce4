package io.github.tapwright.statistics;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Quantiles of Student's t distribution, the normal distribution being its limit.
 */
public final class StudentQuantile {

    private static final double AS_GOOD_AS_NORMAL = 1e6;

    private StudentQuantile() {}

    /**
     * The value that Student's t stays below with a given probability. Source: [GUM], table G.2.
     *
     * @param probability between 0 and 1, both excluded
     * @param degreesOfFreedom greater than 0, may be infinite
     * @return the quantile
     */
    public static double of(double probability, double degreesOfFreedom) {
        return degreesOfFreedom > AS_GOOD_AS_NORMAL
                ? new NormalDistribution().inverseCumulativeProbability(probability)
                : new TDistribution(degreesOfFreedom).inverseCumulativeProbability(probability);
    }
}
