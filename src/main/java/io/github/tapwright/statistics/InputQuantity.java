package io.github.tapwright.statistics;

import org.hipparchus.random.RandomDataGenerator;

/**
 * What an input of a result may be, as a distribution. Source: [GUM-S1], 6.4.
 */
public sealed interface InputQuantity {

    /**
     * One draw.
     *
     * @param random where chance comes from
     * @return a possible value
     */
    double draw(RandomDataGenerator random);

    /**
     * A measured value: normal, or Student's t scaled by u where the degrees of freedom are finite.
     *
     * @param estimate the value with its uncertainty
     */
    record Measured(Estimate estimate) implements InputQuantity {
        @Override
        public double draw(RandomDataGenerator random) {
            double z = random.nextNormal(0, 1);
            double freedom = estimate.degreesOfFreedom();
            if (Double.isFinite(freedom)) {
                z /= Math.sqrt(random.nextGamma(freedom / 2, 2) / freedom);
            }
            return estimate.value() + estimate.standardUncertainty() * z;
        }
    }

    /**
     * Anything between two limits alike, such as a reading that was rounded.
     *
     * @param limits finite
     */
    record Rectangular(Interval limits) implements InputQuantity {
        @Override
        public double draw(RandomDataGenerator random) {
            return limits.lower() + limits.width() * random.nextDouble();
        }
    }
}
