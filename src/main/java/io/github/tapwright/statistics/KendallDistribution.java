package io.github.tapwright.statistics;

import java.util.Arrays;

/**
 * How often each score S comes up when every order of the values is as likely.
 *
 * <p>S = concordant − discordant pairs = m − 2i with m pairs of different values and i inversions. The numbers of orders with i
 * inversions are the coefficients of ∏[j]_q/∏[t]_q!, j = 1…n, over the groups of t equal values, [j]_q = 1 + q + … + q^(j−1); whole
 * numbers that fit 64 bits up to n = 20. Sources: [Kendall1975], [Andrews1976].
 */
final class KendallDistribution {

    /** 20! is the largest factorial below 2^63. */
    static final int MOST = 20;

    private final long[] orders;
    private final double all;

    private KendallDistribution(long[] orders) {
        this.orders = orders;
        this.all = Arrays.stream(orders).asDoubleStream().sum();
    }

    /**
     * The distribution for groups of equal values.
     *
     * @param ties how many values there are of each kind, 1 where a value is unique; 20 in all at most
     */
    static KendallDistribution of(int... ties) {
        int count = Arrays.stream(ties).sum();
        long[] orders = {1};
        for (int j = 2; j <= count; j++) {
            orders = times(orders, j);
        }
        for (int tie : ties) {
            for (int j = 2; j <= tie; j++) {
                orders = dividedBy(orders, j);
            }
        }
        return new KendallDistribution(orders);
    }

    static KendallDistribution ofDifferent(int count) {
        int[] ties = new int[count];
        Arrays.fill(ties, 1);
        return of(ties);
    }

    private static long[] times(long[] polynomial, int j) {
        long[] product = new long[polynomial.length + j - 1];
        for (int i = 0; i < polynomial.length; i++) {
            for (int k = 0; k < j; k++) {
                product[i + k] += polynomial[i];
            }
        }
        return product;
    }

    private static long[] dividedBy(long[] polynomial, int j) {
        long[] quotient = new long[polynomial.length - j + 1];
        for (int i = 0; i < quotient.length; i++) {
            quotient[i] = polynomial[i] - (i > 0 ? polynomial[i - 1] : 0) + (i >= j ? quotient[i - j] : 0);
        }
        return quotient;
    }

    /** P(S ≥ s). */
    double upperTail(int score) {
        int pairs = orders.length - 1;
        double sum = 0;
        for (int i = 0; i <= pairs && pairs - 2 * i >= score; i++) {
            sum += orders[i];
        }
        return sum / all;
    }
}
