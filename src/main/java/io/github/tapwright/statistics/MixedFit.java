package io.github.tapwright.statistics;

import java.util.List;
import java.util.Optional;

/**
 * What a mixed model found.
 *
 * @param fixedEffects intercept and one coefficient for each predictor, each with its degrees of freedom
 * @param residualStandardDeviation σ, within groups, in the values' unit
 * @param groupStandardDeviation between groups (at zero of the predictor, where slopes differ too), same unit
 * @param slope how the slopes differ between groups, where that was asked
 * @param remlCriterion −2 log restricted likelihood at the optimum, to compare fits with the same fixed effects
 * @param onBoundary whether groups, or their slopes, do not differ by more than the scatter within them explains, or
 *     levels and slopes go strictly together: the study is then too small for what was asked
 * @param groups how many
 * @param observations how many
 */
public record MixedFit(
        List<Estimate> fixedEffects,
        double residualStandardDeviation,
        double groupStandardDeviation,
        Optional<RandomSlope> slope,
        double remlCriterion,
        boolean onBoundary,
        int groups,
        int observations) {

    /** Keeps a copy. */
    public MixedFit {
        fixedEffects = List.copyOf(fixedEffects);
    }

    /**
     * How slopes differ between groups.
     *
     * @param standardDeviation of the slopes, in the values' unit per unit of the predictor
     * @param correlation of slope and intercept; empty where one of them does not differ
     */
    public record RandomSlope(double standardDeviation, Optional<Double> correlation) {}
}
