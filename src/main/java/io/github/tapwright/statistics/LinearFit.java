package io.github.tapwright.statistics;

import java.util.List;

/**
 * A straight line, a parabola or a plane through scattered values, by least squares.
 *
 * <p>y = b₀ + b₁x₁ + … + e; b minimises Σe², s² = Σe²/(n − p), and the covariance of b is s²(XᵀX)⁻¹. Solved by Householder's
 * orthogonal triangularisation of scaled columns with refinement against rounding. The residuals must be independent and scatter
 * alike. Sources: [SeberLee2003], [Golub1965].
 *
 * @param coefficients b₀ (y where every x is zero), b₁, …; each with n − p degrees of freedom
 * @param residualStandardDeviation s, in the unit of y
 * @param rSquared the share of y's squares about its mean that the fit explains
 * @param degreesOfFreedom n − p
 */
public record LinearFit(
        List<Estimate> coefficients, double residualStandardDeviation, double rSquared, int degreesOfFreedom) {

    /** Keeps a copy. */
    public LinearFit {
        coefficients = List.copyOf(coefficients);
    }

    /**
     * A straight line.
     *
     * @param x at least three values, not all equal
     * @param y as many
     * @return intercept and slope
     */
    public static LinearFit line(double[] x, double[] y) {
        return of(y, x);
    }

    /**
     * A polynomial in x.
     *
     * @param x more values than the degree + 1, enough of them different
     * @param y as many
     * @param degree 1 or more
     * @return the coefficients of 1, x, x², …
     */
    public static LinearFit polynomial(double[] x, double[] y, int degree) {
        double[][] powers = new double[degree][x.length];
        for (int i = 0; i < x.length; i++) {
            double power = 1;
            for (int d = 0; d < degree; d++) {
                power *= x[i];
                powers[d][i] = power;
            }
        }
        return of(y, powers);
    }

    /**
     * Several quantities at once.
     *
     * @param y what is explained, more values than coefficients
     * @param columns x₁, x₂, …, each as long as y; the constant is added by itself
     * @return b₀ and one coefficient for each column
     */
    public static LinearFit of(double[] y, double[]... columns) {
        return LeastSquares.fit(y, columns);
    }
}
