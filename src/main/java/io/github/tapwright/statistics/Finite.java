package io.github.tapwright.statistics;

/** Refuses series with a gap in them, before it spreads into every result. */
final class Finite {

    private Finite() {}

    static void check(double[]... series) {
        for (double[] values : series) {
            for (int i = 0; i < values.length; i++) {
                if (!Double.isFinite(values[i])) {
                    throw new IllegalArgumentException("value " + (i + 1) + " of " + values.length
                            + " is no finite number (" + values[i] + "): leave it out");
                }
            }
        }
    }
}
