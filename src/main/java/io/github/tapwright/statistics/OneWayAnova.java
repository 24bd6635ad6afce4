package io.github.tapwright.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.FDistribution;

/**
 * How much of the scatter lies between groups and how much within them (one-way analysis of variance).
 *
 * <p>Σ n_g(x̄_g − x̄)² between and ΣΣ(x − x̄_g)² within, with k − 1 and N − k degrees of freedom; F is the ratio of the mean
 * squares. Groups may be of different size. Source: [ISO5725-2], [NIST-StRD].
 *
 * @param groups k, at least 2
 * @param values N, more than k
 * @param betweenSquares sum of squares between groups, in the values' unit squared
 * @param withinSquares sum of squares within groups, same unit
 */
public record OneWayAnova(int groups, int values, double betweenSquares, double withinSquares) {

    /**
     * Takes groups apart.
     *
     * @param groups at least two, none empty, at least one with two values or more; left unchanged
     * @return the sums of squares
     */
    public static OneWayAnova of(List<double[]> groups) {
        int count = groups.stream().mapToInt(g -> g.length).sum();
        if (groups.size() < 2 || groups.stream().anyMatch(g -> g.length == 0) || count == groups.size()) {
            throw new IllegalArgumentException(
                    "at least two groups are needed, none empty and one of them with a repeat");
        }
        double[] all = groups.stream().flatMapToDouble(Arrays::stream).toArray();
        Finite.check(all);
        double origin = Sums.mean(all);
        double between = 0;
        double within = 0;
        double total = 0;
        for (double[] group : groups) {
            double[] relative = relative(group, origin);
            double mean = Sums.mean(relative);
            between += group.length * mean * mean;
            total += group.length * mean;
            within += Sums.squaresAboutMean(relative);
        }
        return new OneWayAnova(groups.size(), count, between - total * total / count, within);
    }

    private static double[] relative(double[] values, double origin) {
        double[] relative = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            relative[i] = values[i] - origin;
        }
        return relative;
    }

    /**
     * Degrees of freedom between groups.
     *
     * @return k − 1
     */
    public int betweenFreedom() {
        return groups - 1;
    }

    /**
     * Degrees of freedom within groups.
     *
     * @return N − k
     */
    public int withinFreedom() {
        return values - groups;
    }

    /**
     * Mean square between groups.
     *
     * @return in the values' unit squared
     */
    public double betweenMeanSquare() {
        return betweenSquares / betweenFreedom();
    }

    /**
     * Mean square within groups.
     *
     * @return in the values' unit squared
     */
    public double withinMeanSquare() {
        return withinSquares / withinFreedom();
    }

    /**
     * The ratio of the mean squares.
     *
     * @return F; empty where nothing scatters within groups
     */
    public OptionalDouble f() {
        return withinSquares > 0 ? OptionalDouble.of(betweenMeanSquare() / withinMeanSquare()) : OptionalDouble.empty();
    }

    /**
     * How often chance alone would make F so large if all groups had one mean.
     *
     * @return between 0 and 1; empty where there is no F
     */
    public OptionalDouble probability() {
        return f().isPresent()
                ? OptionalDouble.of(1
                        - new FDistribution(betweenFreedom(), withinFreedom()).cumulativeProbability(f().getAsDouble()))
                : OptionalDouble.empty();
    }

    /**
     * The share of all squares that lies between groups.
     *
     * @return R² between 0 and 1; empty where nothing scatters at all
     */
    public OptionalDouble rSquared() {
        double all = betweenSquares + withinSquares;
        return all > 0 ? OptionalDouble.of(betweenSquares / all) : OptionalDouble.empty();
    }

    /**
     * The scatter within groups.
     *
     * @return √(mean square within), in the values' unit
     */
    public double residualStandardDeviation() {
        return Math.sqrt(withinMeanSquare());
    }
}
