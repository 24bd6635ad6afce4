package io.github.tapwright.statistics;

import java.util.SplittableRandom;
import org.hipparchus.util.CombinatoricsUtils;

/**
 * Could the difference be a matter of which instrument fell into which group?
 *
 * <p>If the groups do not differ, every way of dealing the same values out to them is as likely as the one seen (for pairs: every
 * choice of signs of the differences). The probability is the share of arrangements with a mean difference as large. It needs
 * no normal distribution, but independent values: one per instrument, not one per tap. Sources: [Fisher1935],
 * [EfronTibshirani1993] ch. 15. Random arrangements end early once {@value #ENOUGH} lay as far apart, as they soon do where groups hardly
 * differ: the probability is then known to a twentieth of itself [BesagClifford1991].
 *
 * @param mostArrangements up to how many every arrangement is counted, at least 1
 * @param randomArrangements how many random ones are counted beyond that at most, at least 100
 * @param seed starts the generator (Java's SplittableRandom); the same seed gives the same count
 */
public record PermutationTest(long mostArrangements, int randomArrangements, long seed) {

    /**
     * Every arrangement up to two million (two groups of 11), else ten thousand random ones at most: the standard error of a
     * probability of 5 % is then 0.2 %, of 1 in 1000 it is 0.03 %.
     */
    public static final PermutationTest USUAL = new PermutationTest(2_000_000, 10_000, 1);

    private static final int ENOUGH = 400;

    /** Refuses counts that prove nothing. */
    public PermutationTest {
        if (mostArrangements < 1 || randomArrangements < 100) {
            throw new IllegalArgumentException(
                    "a permutation test counts at least one arrangement, and at least 100 random ones");
        }
    }

    /**
     * Two groups.
     *
     * @param first at least one value
     * @param second at least one value, same unit
     * @return the count
     */
    public PermutationResult ofMeans(double[] first, double[] second) {
        if (first.length == 0 || second.length == 0) {
            throw new IllegalArgumentException("each group needs at least one value");
        }
        Finite.check(first, second);
        double difference = Sums.mean(second) - Sums.mean(first);
        boolean secondIsSmaller = second.length <= first.length;
        int chosen = Math.min(first.length, second.length);
        double[] terms = centred(secondIsSmaller ? second : first, secondIsSmaller ? first : second);
        if (!secondIsSmaller) {
            negate(terms);
        }
        ArrangementTally tally = new ArrangementTally(sumOfFirst(terms, chosen), terms);
        if (CombinatoricsUtils.binomialCoefficientDouble(terms.length, chosen) <= mostArrangements) {
            everyChoice(terms, 0, chosen, 0, tally);
            return tally.result(difference, Arrangements.EVERY);
        }
        return tally.result(difference, randomChoices(terms, chosen, tally));
    }

    /**
     * Pairs: each instrument before and after, or two built alike.
     *
     * @param differences second minus first of each pair, at least one
     * @return the count
     */
    public PermutationResult ofPairs(double... differences) {
        if (differences.length == 0) {
            throw new IllegalArgumentException("at least one pair is needed");
        }
        Finite.check(differences);
        double mean = Sums.mean(differences);
        ArrangementTally tally = new ArrangementTally(sumOfFirst(differences, differences.length), differences);
        if (Math.pow(2, differences.length) <= mostArrangements) {
            everySign(differences, 0, 0, tally);
            return tally.result(mean, Arrangements.EVERY);
        }
        return tally.result(mean, randomSigns(differences, tally));
    }

    private Arrangements randomSigns(double[] differences, ArrangementTally tally) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < randomArrangements; i++) {
            double sum = 0;
            for (double difference : differences) {
                sum += random.nextBoolean() ? difference : -difference;
            }
            tally.add(sum);
            if (tally.asFarApart() == ENOUGH) {
                return Arrangements.RANDOM_UNTIL_SURE;
            }
        }
        return Arrangements.RANDOM;
    }

    /** All values less their mean: the sum over a group then tells the difference of means. */
    private static double[] centred(double[] chosen, double[] others) {
        double[] all = new double[chosen.length + others.length];
        System.arraycopy(chosen, 0, all, 0, chosen.length);
        System.arraycopy(others, 0, all, chosen.length, others.length);
        double mean = Sums.mean(all);
        for (int i = 0; i < all.length; i++) {
            all[i] -= mean;
        }
        return all;
    }

    private static void negate(double[] terms) {
        for (int i = 0; i < terms.length; i++) {
            terms[i] = -terms[i];
        }
    }

    private static double sumOfFirst(double[] terms, int count) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += terms[i];
        }
        return sum;
    }

    private static void everyChoice(double[] terms, int from, int stillToChoose, double sum, ArrangementTally tally) {
        if (stillToChoose == 0) {
            tally.add(sum);
            return;
        }
        for (int i = from; i <= terms.length - stillToChoose; i++) {
            everyChoice(terms, i + 1, stillToChoose - 1, sum + terms[i], tally);
        }
    }

    private static void everySign(double[] terms, int from, double sum, ArrangementTally tally) {
        if (from == terms.length) {
            tally.add(sum);
            return;
        }
        everySign(terms, from + 1, sum + terms[from], tally);
        everySign(terms, from + 1, sum - terms[from], tally);
    }

    private Arrangements randomChoices(double[] terms, int chosen, ArrangementTally tally) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] deck = terms.clone();
        for (int round = 0; round < randomArrangements; round++) {
            tally.add(dealt(deck, chosen, random));
            if (tally.asFarApart() == ENOUGH) {
                return Arrangements.RANDOM_UNTIL_SURE;
            }
        }
        return Arrangements.RANDOM;
    }

    /**
     * The sum of a hand dealt from the deck. One random number serves two cards; that 2³² is no multiple of the cards left makes some
     * likelier than others by 1 in 10⁷ at most, which no count of arrangements can see.
     */
    private static double dealt(double[] deck, int chosen, SplittableRandom random) {
        double sum = 0;
        long bits = 0;
        for (int i = 0; i < chosen; i++) {
            bits = (i & 1) == 0 ? random.nextLong() : bits << 32;
            int pick = i + (int) (((bits >>> 32) * (deck.length - i)) >>> 32);
            double card = deck[pick];
            deck[pick] = deck[i];
            deck[i] = card;
            sum += card;
        }
        return sum;
    }
}
