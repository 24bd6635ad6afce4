package io.github.tapwright.statistics;

import org.hipparchus.distribution.discrete.BinomialDistribution;

/**
 * How often chance alone gives so many right answers of two or more choices.
 *
 * <p>P(X ≥ k) = Σ C(n, i) pⁱ (1 − p)ⁿ⁻ⁱ over i = k … n, one-sided and exact. Source: [ISO10399], table A.1 rests on it.
 */
public final class BinomialTail {

    private BinomialTail() {}

    /**
     * The probability of at least so many right answers.
     *
     * @param right k, 0 to count
     * @param count n, answers in all, 1 or more
     * @param chance p, probability that one answer is right, between 0 and 1
     * @return between 0 and 1
     * @throws IllegalArgumentException if the figures are not of such a test
     */
    public static double atLeast(int right, int count, double chance) {
        if (count < 1 || right < 0 || right > count || !(chance >= 0 && chance <= 1)) {
            throw new IllegalArgumentException(right + " right of " + count + " at a chance of " + chance);
        }
        // Counted from the wrong answers, so that a small probability is not the difference of two large ones.
        return new BinomialDistribution(count, 1 - chance).cumulativeProbability(count - right);
    }

    /**
     * The fewest right answers that chance alone brings no more often than wanted.
     *
     * @param count n, answers in all
     * @param chance p, probability that one answer is right
     * @param level largest probability that is small enough, such as 0.05
     * @return that number; n + 1 where even all of them right would not do
     */
    public static int needed(int count, double chance, double level) {
        int right = 0;
        while (right <= count && atLeast(right, count, chance) > level) {
            right++;
        }
        return right;
    }
}
