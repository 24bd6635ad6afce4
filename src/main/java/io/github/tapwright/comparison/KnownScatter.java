package io.github.tapwright.comparison;

import io.github.tapwright.statistics.Estimate;
import java.util.stream.Stream;

/**
 * How far figures of one kind scatter from one sitting to the next, and where that is known from.
 *
 * @param deviation one standard deviation, not negative: of ratios and shares a pure number, else in the figure's unit
 * @param degreesOfFreedom how much is known about it, above 0
 * @param basis where it comes from
 */
public record KnownScatter(double deviation, double degreesOfFreedom, SetUpSpread.Basis basis) {

    /** Refuses what is no deviation. */
    public KnownScatter {
        if (!(deviation >= 0)) {
            throw new IllegalArgumentException("a deviation must not be negative, was " + deviation);
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("degrees of freedom must be positive, were " + degreesOfFreedom);
        }
    }

    /** What is taken as well known, because somebody said so or nobody knows better. */
    static KnownScatter said(double deviation, SetUpSpread.Basis basis) {
        return new KnownScatter(deviation, Double.POSITIVE_INFINITY, basis);
    }

    /**
     * Its part in a budget, if nobody has measured or said it: such a part must make nothing surer, see
     * {@link io.github.tapwright.statistics.UncertaintyBudget#combinedAssuming}.
     *
     * @param part the part's name
     * @return that name; empty where it is measured or given
     */
    public Stream<String> assumed(String part) {
        return basis.isAssumed() ? Stream.of(part) : Stream.empty();
    }

    /**
     * What it does to a figure: zero with this scatter about it.
     *
     * @return an estimate of value 0
     */
    public Estimate estimate() {
        return new Estimate(0, deviation, degreesOfFreedom);
    }
}
