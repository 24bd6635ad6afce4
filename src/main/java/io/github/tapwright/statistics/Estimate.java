package io.github.tapwright.statistics;

/**
 * A measured value with its standard uncertainty.
 *
 * <p>The interval of coverage p is value ± t_p(ν)·u with ν degrees of freedom. Source: [GUM], G.3.
 *
 * @param value the best estimate, finite, in the unit the holder's name says
 * @param standardUncertainty u, one standard deviation, finite and not negative, in the same unit
 * @param degreesOfFreedom ν behind u, greater than 0; {@link Double#POSITIVE_INFINITY} where u is as good as known
 */
public record Estimate(double value, double standardUncertainty, double degreesOfFreedom) {

    /** Refuses values that are not numbers. */
    public Estimate {
        if (!Double.isFinite(value) || !Double.isFinite(standardUncertainty) || standardUncertainty < 0) {
            throw new IllegalArgumentException(
                    "an estimate needs finite numbers, got " + value + " ± " + standardUncertainty);
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("degrees of freedom must be positive, were " + degreesOfFreedom);
        }
    }

    /**
     * A value whose uncertainty is as good as known.
     *
     * @param value the best estimate
     * @param standardUncertainty one standard deviation, same unit
     * @return the estimate with infinite degrees of freedom
     */
    public static Estimate of(double value, double standardUncertainty) {
        return new Estimate(value, standardUncertainty, Double.POSITIVE_INFINITY);
    }

    /**
     * Half the width of the 95 % interval: t_0.975(ν)·u.
     *
     * @return the expanded uncertainty of 95 % coverage, same unit as the value
     */
    public double halfWidth95() {
        return StudentQuantile.of(0.975, degreesOfFreedom) * standardUncertainty;
    }

    /**
     * By how much two such, the true value the same, differ at most, 19 times of 20: √2 times the half width.
     *
     * @return not negative, same unit as the value
     */
    public double limitOfTwo95() {
        return Math.sqrt(2) * halfWidth95();
    }

    /**
     * Where the true value lies, 19 times of 20.
     *
     * @return value ± {@link #halfWidth95}
     */
    public Interval interval95() {
        double half = halfWidth95();
        return new Interval(value - half, value + half);
    }

    /**
     * Whether zero lies outside the 95 % interval.
     *
     * @return true if the value differs from zero, false if one cannot tell
     */
    public boolean differsFromZero() {
        return Math.abs(value) > halfWidth95();
    }

    /**
     * The same estimate, taken to be known no better than one of its parts.
     *
     * @param part what u mostly rests on
     * @return with the smaller of both degrees of freedom
     */
    public Estimate knownNoBetterThan(Estimate part) {
        return new Estimate(value, standardUncertainty, Math.min(degreesOfFreedom, part.degreesOfFreedom));
    }

    /**
     * The same estimate in another unit: both numbers times {@code factor}.
     *
     * @param factor finite
     * @return the scaled estimate
     */
    public Estimate times(double factor) {
        return new Estimate(value * factor, standardUncertainty * Math.abs(factor), degreesOfFreedom);
    }
}
