package io.github.tapwright.statistics;

import java.util.OptionalDouble;

/**
 * How many values there are, their mean and how far they scatter.
 *
 * <p>s² = Σ(x − x̄)²/(n − 1), summed so that large values with small differences keep their digits ([Chan1983]); the mean's
 * standard uncertainty is s/√n with n − 1 degrees of freedom ([GUM], 4.2).
 *
 * @param count n, at least 2
 * @param mean x̄, in the values' unit
 * @param standardDeviation s, not negative, same unit
 */
public record Summary(int count, double mean, double standardDeviation) {

    /** Refuses what is no summary. */
    public Summary {
        if (count < 2) {
            throw new IllegalArgumentException("scatter needs at least two values, there is " + count);
        }
        if (!Double.isFinite(mean) || !Double.isFinite(standardDeviation) || standardDeviation < 0) {
            throw new IllegalArgumentException(
                    "a summary needs finite numbers, got " + mean + " with scatter " + standardDeviation);
        }
    }

    /**
     * Sums values up.
     *
     * @param values at least two finite values, left unchanged
     * @return their summary
     */
    public static Summary of(double... values) {
        if (values.length < 2) {
            throw new IllegalArgumentException("scatter needs at least two values, there is " + values.length);
        }
        Finite.check(values);
        double squares = Sums.squaresAboutMean(values);
        return new Summary(values.length, Sums.mean(values), Math.sqrt(squares / (values.length - 1)));
    }

    /**
     * The mean with its standard uncertainty.
     *
     * @return x̄ with s/√n and n − 1 degrees of freedom
     */
    public Estimate ofMean() {
        return new Estimate(mean, Math.sqrt(varianceOfMean()), degreesOfFreedom());
    }

    /**
     * How alike neighbours in a series are: Σ(xᵢ − x̄)(xᵢ₊₁ − x̄)/Σ(xᵢ − x̄)². Well above zero, the values drift and the
     * uncertainty of their mean is larger than s/√n. Source: [NIST-StRD], univariate statistics.
     *
     * @param values at least two, in the order they were taken
     * @return between about −1 and 1; empty where nothing scatters
     */
    public static OptionalDouble lag1Autocorrelation(double... values) {
        Summary summary = of(values);
        double products = 0;
        for (int i = 1; i < values.length; i++) {
            products += (values[i - 1] - summary.mean) * (values[i] - summary.mean);
        }
        double squares = Sums.squaresAboutMean(values);
        return squares > 0 ? OptionalDouble.of(products / squares) : OptionalDouble.empty();
    }

    double variance() {
        return standardDeviation * standardDeviation;
    }

    double varianceOfMean() {
        return variance() / count;
    }

    double degreesOfFreedom() {
        return count - 1.0;
    }
}
