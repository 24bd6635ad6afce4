package io.github.tapwright.mode.body;

import java.util.function.DoubleUnaryOperator;

/** Finds where a smooth curve has its one top between two places, by golden section. */
final class Extremum {

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private Extremum() {}

    static double maximum(DoubleUnaryOperator curve, double low, double high) {
        double a = low;
        double b = high;
        while (b - a > 1e-7) {
            double left = b - GOLDEN * (b - a);
            double right = a + GOLDEN * (b - a);
            if (curve.applyAsDouble(left) > curve.applyAsDouble(right)) {
                b = right;
            } else {
                a = left;
            }
        }
        return (a + b) / 2;
    }

    static double minimum(DoubleUnaryOperator curve, double low, double high) {
        return maximum(x -> -curve.applyAsDouble(x), low, high);
    }
}
