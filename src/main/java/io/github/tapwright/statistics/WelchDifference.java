package io.github.tapwright.statistics;

/**
 * How far the means of two groups lie apart when they may scatter differently.
 *
 * <p>u² = s₁²/n₁ + s₂²/n₂ and ν = u⁴ / ((s₁²/n₁)²/(n₁−1) + (s₂²/n₂)²/(n₂−1)), the degrees of freedom of Welch and
 * Satterthwaite. Source: [Welch1947]. The values of a group must be independent: taps of one set-up are not.
 */
public final class WelchDifference {

    private WelchDifference() {}

    /**
     * The difference of two groups' means.
     *
     * @param first at least two values
     * @param second at least two values, same unit
     * @return mean of the second minus mean of the first
     */
    public static Estimate of(double[] first, double[] second) {
        return of(Summary.of(first), Summary.of(second));
    }

    /**
     * The same from what is known of each group.
     *
     * @param first the first group
     * @param second the second group, same unit
     * @return mean of the second minus mean of the first; with n₁ + n₂ − 2 degrees of freedom if neither scatters
     */
    public static Estimate of(Summary first, Summary second) {
        double a = first.varianceOfMean();
        double b = second.varianceOfMean();
        double freedom = a + b == 0
                ? first.degreesOfFreedom() + second.degreesOfFreedom()
                : (a + b) * (a + b) / (a * a / first.degreesOfFreedom() + b * b / second.degreesOfFreedom());
        return new Estimate(second.mean() - first.mean(), Math.sqrt(a + b), freedom);
    }
}
