package io.github.tapwright.statistics;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * How often chance alone brings an estimate so far from zero.
 */
public final class StudentProbability {

    private static final double AS_GOOD_AS_NORMAL = 1e6;

    private StudentProbability() {}

    /**
     * The two-sided probability of Student's t = value/u. Source: [Student1908].
     *
     * @param estimate what is compared with zero
     * @return between 0 and 1; of an estimate without uncertainty 1 if it is zero, else 0
     */
    public static double twoSided(Estimate estimate) {
        if (estimate.standardUncertainty() == 0) {
            return estimate.value() == 0 ? 1 : 0;
        }
        double t = Math.abs(estimate.value()) / estimate.standardUncertainty();
        double freedom = estimate.degreesOfFreedom();
        return 2
                * (freedom > AS_GOOD_AS_NORMAL
                        ? new NormalDistribution().cumulativeProbability(-t)
                        : new TDistribution(freedom).cumulativeProbability(-t));
    }
}
