package io.github.tapwright.statistics;

/**
 * What a result may be when its inputs are drawn many times.
 *
 * @param mean of the drawn results
 * @param standardUncertainty their standard deviation
 * @param symmetric95 from the 2.5 % to the 97.5 % quantile
 * @param shortest95 the shortest range with 95 % of the draws; differs where the result leans to one side
 * @param trials how many draws
 */
public record Propagation(
        double mean, double standardUncertainty, Interval symmetric95, Interval shortest95, int trials) {

    /**
     * How far the mean may be off for want of more draws.
     *
     * @return u/√trials
     */
    public double uncertaintyOfMean() {
        return standardUncertainty / Math.sqrt(trials);
    }
}
