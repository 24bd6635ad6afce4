package io.github.tapwright.statistics;

import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * Finds the relative variances with the largest restricted likelihood.
 *
 * <p>The criterion is even in the diagonal of Λ, so the search needs no bounds: a variance of zero is a place like any other. One
 * variance: a coarse look along the whole half-line, then Brent's method, then the zero of the derivative. Variance, slope and covariance: the simplex of Nelder
 * and Mead, begun anew until it stays. Sources: [Brent1973], [NelderMead1965].
 */
final class RemlSearch {

    /** Places of the coarse look: standard deviations between groups relative to σ, from none to a hundred thousand. */
    private static final int PLACES = 32;

    private static final double LARGEST = 1e5;
    private static final double SMALLEST = 1e-3;
    private static final int EVALUATIONS = 20_000;
    private static final int RESTARTS = 20;
    /** How far about the lowest place found the level one is sought. */
    private static final double POLISH = 1e-5;

    private static final double STILL = 1e-10;
    private static final double SETTLED = 1e-8;

    static final String NOTHING_LEFT =
            "the values within groups follow the predictors to the last digit: there is no scatter to judge by";

    private RemlSearch() {}

    static double[] of(MixedData data) {
        return data.slope.isPresent() ? slopes(data) : new double[] {levels(data)};
    }

    private static double levels(MixedData data) {
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
            double zz = own.zz().getEntry(0, 0);
            double m = 1 + place * place * zz;
            RealVector zx = own.zx().getRowVector(0);
            double left = own.zy().getEntry(0) - zx.dotProduct(profile.coefficients);
            sum += zz / m - (profile.variance(zx) + left * left / profile.residualVariance()) / (m * m);
        }
        return sum;
    }

    private static double[] slopes(MixedData data) {
        double scale = data.slopeScale();
        MultivariateFunction criterion = t -> new RemlProfile(data, t[0], t[1] / scale, t[2] / scale).criterion();
        double[] at = {1, 0, 1};
        double lowest = criterion.value(at);
        for (int restart = 0; restart < RESTARTS; restart++) {
            double before = lowest;
            var found = new SimplexOptimizer(new SimpleValueChecker(-1, STILL))
                    .optimize(
                            new MaxEval(EVALUATIONS),
                            GoalType.MINIMIZE,
                            new ObjectiveFunction(criterion),
                            new InitialGuess(at),
                            new NelderMeadSimplex(3, 0.5));
            at = found.getPoint();
            lowest = found.getValue();
            if (restart > 0 && before - lowest < SETTLED) {
                break;
            }
        }
        return new double[] {at[0], at[1] / scale, at[2] / scale};
    }
}
