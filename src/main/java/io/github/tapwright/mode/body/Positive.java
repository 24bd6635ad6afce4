package io.github.tapwright.mode.body;

/** The one demand that every mass, area and frequency here must meet. */
final class Positive {

    private Positive() {}

    static void require(double value, String what) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("the " + what + " must be greater than zero and finite, was " + value);
        }
    }

    static void requireQ(double value, String what) {
        if (!(value > 0.5)) {
            throw new IllegalArgumentException("the Q of the " + what + " must be greater than 1/2, was " + value);
        }
    }
}
