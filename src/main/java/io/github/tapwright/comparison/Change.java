package io.github.tapwright.comparison;

import io.github.tapwright.statistics.Estimate;

/**
 * How far one figure lies from another.
 *
 * @param difference second minus first, with u² = u₁² + u₂² + s₁² + s₂² for the spread s of setting up; [GUM], 5.1.2
 */
public record Change(Estimate difference) {

    /**
     * The change between two figures.
     *
     * @param first before
     * @param second after
     * @param firstSpread spread of setting up at the first, same unit
     * @param secondSpread spread of setting up at the second, same unit
     * @return their difference
     */
    static Change between(Estimate first, Estimate second, double firstSpread, double secondSpread) {
        double within = Math.hypot(first.standardUncertainty(), second.standardUncertainty());
        double u = Math.hypot(within, Math.hypot(firstSpread, secondSpread));
        return new Change(Estimate.of(second.value() - first.value(), u));
    }

    /**
     * Whether the difference lies outside its own 95 % interval about zero.
     *
     * @return true if the two differ, false if one cannot tell
     */
    public boolean differs() {
        return difference.differsFromZero();
    }
}
