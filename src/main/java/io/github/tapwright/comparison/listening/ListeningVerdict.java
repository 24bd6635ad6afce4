package io.github.tapwright.comparison.listening;

import io.github.tapwright.sitting.listening.ListeningSession;
import io.github.tapwright.statistics.BinomialTail;

/**
 * What the answers of a finished listening prove.
 *
 * @param right how many were right
 * @param count how many there were
 * @param needed how many right answers guessing brings in no more than 5 % of such listenings
 * @param chance how often guessing alone brings so many right answers or more, P(X ≥ right) with p = ½
 * @param chanceToProve how often a listener who is right three times out of four reaches the needed number
 */
public record ListeningVerdict(int right, int count, int needed, double chance, double chanceToProve) {

    /** What counts as proof: chance does as well in no more than this share of listenings. A convention. */
    public static final double LEVEL = 0.05;

    private static final double GUESSING = 0.5;
    private static final double GOOD_EAR = 0.75;

    /**
     * The verdict on a listening.
     *
     * @param session a finished one
     * @return the verdict
     * @throws IllegalArgumentException if it is not finished: an early end could be chosen because it looks good
     */
    public static ListeningVerdict of(ListeningSession session) {
        if (!session.finished()) {
            throw new IllegalArgumentException("listening " + session.id() + " is not finished");
        }
        return of(session.rightCount(), session.setUp().trialCount());
    }

    static ListeningVerdict of(int right, int count) {
        int needed = BinomialTail.needed(count, GUESSING, LEVEL);
        return new ListeningVerdict(
                right,
                count,
                needed,
                BinomialTail.atLeast(right, count, GUESSING),
                BinomialTail.atLeast(needed, count, GOOD_EAR));
    }

    /**
     * Whether the sounds were told apart.
     *
     * @return false means "cannot tell", not "alike"
     */
    public boolean toldApart() {
        return right >= needed;
    }
}
