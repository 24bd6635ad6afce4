package io.github.tapwright.statistics;

import java.util.Optional;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.special.Gamma;

/**
 * How large a difference is beside the scatter within the groups (Hedges' g).
 *
 * <p>d = (x̄₂ − x̄₁)/s_p with the pooled s_p; g = J·d, J = Γ(ν/2)/(√(ν/2)·Γ((ν−1)/2)), ν = n₁ + n₂ − 2, takes away what small
 * samples exaggerate. u² = J²·((n₁+n₂)/(n₁n₂) + d²/(2(n₁+n₂))). The interval is that of the true difference in true standard
 * deviations, from the noncentral t distribution, and is not symmetric. Sources: [Hedges1981], [Borenstein2009] ch. 4.
 *
 * @param value g, in standard deviations
 * @param standardUncertainty u, same unit
 * @param interval95 of the true effect, same unit
 */
public record EffectSize(double value, double standardUncertainty, Interval interval95) {

    private static final double TAIL = 0.025;

    /**
     * Hedges' g of two groups.
     *
     * @param first what is known of the first group
     * @param second of the second group, same unit
     * @return second minus first; empty where neither group scatters
     */
    public static Optional<EffectSize> of(Summary first, Summary second) {
        double freedom = first.degreesOfFreedom() + second.degreesOfFreedom();
        double pooled =
                Math.sqrt((first.degreesOfFreedom() * first.variance() + second.degreesOfFreedom() * second.variance())
                        / freedom);
        if (pooled == 0) {
            return Optional.empty();
        }
        double d = (second.mean() - first.mean()) / pooled;
        double both = (double) first.count() + second.count();
        double spread = both / ((double) first.count() * second.count());
        double j = smallSampleFactor(freedom);
        double u = j * Math.sqrt(spread + d * d / (2 * both));
        return Optional.of(new EffectSize(j * d, u, interval(d / Math.sqrt(spread), freedom, Math.sqrt(spread))));
    }

    /** J, below 1. */
    static double smallSampleFactor(double freedom) {
        return Math.exp(Gamma.logGamma(freedom / 2) - Gamma.logGamma((freedom - 1) / 2)) / Math.sqrt(freedom / 2);
    }

    private static Interval interval(double t, double freedom, double scale) {
        return new Interval(scale * shift(t, freedom, 1 - TAIL), scale * shift(t, freedom, TAIL));
    }

    /** The δ under which T stays below t with this probability. */
    private static double shift(double t, double freedom, double probability) {
        double far = 3 * Math.abs(t) + 10;
        return new BrentSolver(1e-10, 1e-10)
                .solve(200, delta -> NoncentralT.cumulative(t, freedom, delta) - probability, -far, far);
    }
}
