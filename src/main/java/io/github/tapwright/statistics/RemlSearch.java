package io.github.tapwright.statistics;

import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * Finds the relative standard deviation of the groups with the largest restricted likelihood.
 *
 * <p>The criterion is even in Λ, so the search needs no bounds: a variance of zero is a place like any other. A coarse look along the
 * whole half-line, then Brent's method, then the zero of the derivative. Source: [Brent1973].
 */
final class RemlSearch {

    /** Places of the coarse look: standard deviations between groups relative to σ, from none to a hundred thousand. */
    private static final int PLACES = 32;

    private static final double LARGEST = 1e5;
    private static final double SMALLEST = 1e-3;
    private static final int EVALUATIONS = 20_000;
    /** How far about the lowest place found the level one is sought. */
    private static final double POLISH = 1e-5;

    static final String NOTHING_LEFT =
            "the values within groups follow the predictors to the last digit: there is no scatter to judge by";

    private RemlSearch() {}

    static double of(MixedData data) {
        double best = 0;
        double lowest = new RemlProfile(data, 0).criterion();
        double ratio = Math.pow(LARGEST / SMALLEST, 1.0 / PLACES);
        for (int i = 0; i <= PLACES; i++) {
            double place = SMALLEST * Math.pow(ratio, i);
            double criterion = new RemlProfile(data, place).criterion();
            if (criterion < lowest) {
                lowest = criterion;
                best = place;
            }
        }
        if (best > LARGEST / ratio) {
            throw new IllegalArgumentException(NOTHING_LEFT);
        }
        if (best == 0) {
            return 0;
        }
        double lowestPlace = new BrentOptimizer(1e-9, 1e-12)
                .optimize(
                        new MaxEval(EVALUATIONS),
                        GoalType.MINIMIZE,
                        new UnivariateObjectiveFunction(t -> new RemlProfile(data, t).criterion()),
                        new SearchInterval(best / ratio, best * ratio, best))
                .getPoint();
        return whereLevel(data, lowestPlace);
    }

    /** Near its minimum the criterion is level to half the digits; its derivative is not. */
    private static double whereLevel(MixedData data, double near) {
        double low = near * (1 - POLISH);
        double high = near * (1 + POLISH);
        return derivative(data, low) < 0 && derivative(data, high) > 0
                ? new BrentSolver(1e-14, 1e-14).solve(EVALUATIONS, t -> derivative(data, t), low, high)
                : near;
    }

    /** Of the criterion, by Λ² at Λ = place: Σ zz/m − (Zx)ᵀ(XᵀW⁻¹X)⁻¹(Zx)/m² − (Zᵀ(y − Xβ))²/(m²σ²), m = 1 + Λ²zz. */
    private static double derivative(MixedData data, double place) {
        RemlProfile profile = new RemlProfile(data, place);
        double sum = 0;
        for (MixedData.Products own : data.products) {
            double m = 1 + place * place * own.zz();
            double left = own.zy() - own.zx().dotProduct(profile.coefficients);
            sum += own.zz() / m - (profile.variance(own.zx()) + left * left / profile.residualVariance()) / (m * m);
        }
        return sum;
    }
}
