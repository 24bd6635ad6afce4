package io.github.tapwright.statistics;

import java.util.List;

/**
 * What a mixed model found.
 *
 * @param fixedEffects intercept and one coefficient for each predictor, each with its degrees of freedom
 * @param residualStandardDeviation σ, within groups, in the values' unit
 * @param groupStandardDeviation between groups, same unit
 * @param remlCriterion −2 log restricted likelihood at the optimum, to compare fits with the same fixed effects
 * @param onBoundary whether groups do not differ by more than the scatter within them explains: the study is then too small
 *     for what was asked
 * @param groups how many
 * @param observations how many
 */
public record MixedFit(
        List<Estimate> fixedEffects,
        double residualStandardDeviation,
        double groupStandardDeviation,
        double remlCriterion,
        boolean onBoundary,
        int groups,
        int observations) {

    /** Keeps a copy. */
    public MixedFit {
        fixedEffects = List.copyOf(fixedEffects);
    }
}
