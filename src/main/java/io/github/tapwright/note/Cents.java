package io.github.tapwright.note;

/** Intervals in cents: 1200·log2(upper/lower), 100 to the semitone. */
final class Cents {

    /** One cent is so much of a natural logarithm: 1200/ln 2. */
    static final double PER_NEPER = 1200 / Math.log(2);

    private Cents() {}

    static double between(double lowerHz, double upperHz) {
        return PER_NEPER * Math.log(upperHz / lowerHz);
    }
}
