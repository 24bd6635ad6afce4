package io.github.tapwright.statistics;

/**
 * How often dealing the values out anew brings a difference as large as the one seen.
 *
 * @param difference mean of the second minus mean of the first, or the mean of the differences within pairs
 * @param kind whether every arrangement was counted
 * @param counted how many were counted; every one includes the arrangement seen
 * @param asFarApart of these, how many with a difference as large, either way
 * @param asFarUp how many with a difference as high or higher
 * @param asFarDown how many with a difference as low or lower
 */
public record PermutationResult(
        double difference, Arrangements kind, long counted, long asFarApart, long asFarUp, long asFarDown) {

    /**
     * The two-sided probability: m/N of every arrangement, (m + 1)/(N + 1) of random ones, so that it is never zero and
     * never too small on average [PhipsonSmyth2010]; m/N where the m-th ended the count [BesagClifford1991].
     *
     * @return above 0, at most 1
     */
    public double probability() {
        return kind == Arrangements.RANDOM ? (asFarApart + 1.0) / (counted + 1.0) : (double) asFarApart / counted;
    }

    /**
     * The standard uncertainty of that probability: √(p(1−p)/(N+1)) for random arrangements, p·√((1−p)/m) where the m-th ended
     * the count.
     *
     * @return 0 where every arrangement was counted
     */
    public double probabilityUncertainty() {
        double p = probability();
        return switch (kind) {
            case EVERY -> 0;
            case RANDOM -> Math.sqrt(p * (1 - p) / (counted + 1.0));
            case RANDOM_UNTIL_SURE -> p * Math.sqrt((1 - p) / asFarApart);
        };
    }
}
