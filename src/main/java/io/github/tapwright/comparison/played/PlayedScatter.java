package io.github.tapwright.comparison.played;

import io.github.tapwright.comparison.KnownScatter;
import io.github.tapwright.comparison.SetUpSpread.Basis;
import io.github.tapwright.comparison.StudiedResonance.SetUpScatter;
import io.github.tapwright.statistics.DeviationInterval;
import io.github.tapwright.statistics.Interval;

/**
 * How far one quantity over all strings scatters from sitting to sitting of a study of playing again.
 *
 * <p>Formulas and sources are in docs/methods/comparison.md.
 *
 * @param quantity which
 * @param scatter on the scale of comparison: s_r what its notes or plucks leave unsure of a sitting's mean, s_L what playing again adds, s_R
 *     both together
 * @param sittings how many, two at least
 * @param strings how many strings went in
 * @param figures how many places, or plucks of the sitting that has fewest
 */
public record PlayedScatter(PlayedQuantity quantity, SetUpScatter scatter, int sittings, int strings, int figures) {

    /** Never less of s_R² is put down to playing again, so that a lucky study cannot say that it moves nothing. */
    private static final double LEAST_SHARE = 0.5;

    private static final double MOST_SHARE = 1;
    private static final double MOST_DB = 20;

    static PlayedScatter of(PlayedQuantity quantity, SittingMeans means) {
        return new PlayedScatter(
                quantity, SetUpScatter.of(means.means()), means.means().size(), means.strings(), means.figures());
    }

    /**
     * The mean over sittings and strings; geometric for decay times.
     *
     * @return seconds, dB or LUFS
     */
    public double mean() {
        return quantity.figure(scatter.mean());
    }

    /**
     * What comparisons count with: s² = s_R² − s_r², at least half of s_R², with k − 1 degrees of freedom.
     *
     * <p>Notes or plucks have a part of their own in a comparison, which is why theirs is taken off here.
     *
     * @return on the scale of comparison
     */
    public KnownScatter counted() {
        double all = variance(scatter.reproducibility());
        double again = Math.max(all - variance(scatter.withinSetUp()), LEAST_SHARE * all);
        return known(Math.sqrt(again));
    }

    /**
     * Whether {@link #counted} is half of s_R² because what is left without the notes or plucks is less.
     *
     * @return true if the notes or plucks of a sitting explain more than half of what its mean scatters
     */
    public boolean isMostlyWithin() {
        return variance(scatter.withinSetUp()) > LEAST_SHARE * variance(scatter.reproducibility());
    }

    /**
     * Where the true s_R lies, 19 times of 20.
     *
     * @return on the scale of comparison
     */
    public Interval reproducibility95() {
        return DeviationInterval.of95(scatter.reproducibility(), sittings - 1.0);
    }

    /** Beyond these nothing can be told anyway. */
    private KnownScatter known(double deviation) {
        return new KnownScatter(
                Math.min(quantity.isRatio() ? MOST_SHARE : MOST_DB, deviation), sittings - 1.0, Basis.STUDIED);
    }

    private static double variance(double deviation) {
        return deviation * deviation;
    }
}
