package io.github.tapwright.statistics;

/** Counts sums as far out as the one seen; sums that differ by rounding alone count as equal. */
final class ArrangementTally {

    private static final double ROUNDING = 1e-12;

    private final double seen;
    private final double slack;
    private long counted;
    private long asFarApart;
    private long asFarUp;
    private long asFarDown;

    ArrangementTally(double seen, double[] terms) {
        double sum = 0;
        for (double term : terms) {
            sum += Math.abs(term);
        }
        this.seen = seen;
        this.slack = ROUNDING * sum;
    }

    void add(double sum) {
        counted++;
        if (Math.abs(sum) >= Math.abs(seen) - slack) {
            asFarApart++;
        }
        if (sum >= seen - slack) {
            asFarUp++;
        }
        if (sum <= seen + slack) {
            asFarDown++;
        }
    }

    long asFarApart() {
        return asFarApart;
    }

    PermutationResult result(double difference, Arrangements kind) {
        return new PermutationResult(difference, kind, counted, asFarApart, asFarUp, asFarDown);
    }
}
