package io.github.tapwright.statistics;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.FDistribution;

/**
 * Intervals of 95 % for variances put together from two independent mean squares.
 *
 * <p>The modified large-sample method: exact where one mean square dominates, close in between, whatever their degrees of
 * freedom. Source: [BurdickGraybill1992].
 */
final class MeanSquareIntervals {

    private static final double TAIL = 0.025;

    private final double first;
    private final double second;
    private final double g1;
    private final double g2;
    private final double h1;
    private final double h2;
    private final double highRatio;
    private final double lowRatio;

    MeanSquareIntervals(double first, double firstFreedom, double second, double secondFreedom) {
        this.first = first;
        this.second = second;
        g1 = 1 - 1 / ratio(1 - TAIL, firstFreedom);
        g2 = 1 - 1 / ratio(1 - TAIL, secondFreedom);
        h1 = 1 / ratio(TAIL, firstFreedom) - 1;
        h2 = 1 / ratio(TAIL, secondFreedom) - 1;
        FDistribution f = new FDistribution(firstFreedom, secondFreedom);
        highRatio = f.inverseCumulativeProbability(1 - TAIL);
        lowRatio = f.inverseCumulativeProbability(TAIL);
    }

    /** Of the second mean square alone: χ². */
    Interval ofSecond() {
        return new Interval(second * (1 - g2), second * (1 + h2));
    }

    /** Of a·first + b·second, neither factor negative. */
    Interval ofSum(double a, double b) {
        double x = a * first;
        double y = b * second;
        return new Interval(x + y - Math.hypot(g1 * x, g2 * y), x + y + Math.hypot(h1 * x, h2 * y));
    }

    /** Of a·(first − second), cut off at zero, where a variance ends. */
    Interval ofDifference(double a) {
        double x = first * first;
        double y = second * second;
        double g12 = (square(highRatio - 1) - square(g1 * highRatio) - h2 * h2) / highRatio;
        double h12 = (square(1 - lowRatio) - square(h1 * lowRatio) - g2 * g2) / lowRatio;
        double down = Math.sqrt(Math.max(0, g1 * g1 * x + h2 * h2 * y + g12 * first * second));
        double up = Math.sqrt(Math.max(0, h1 * h1 * x + g2 * g2 * y + h12 * first * second));
        double middle = first - second;
        return new Interval(a * Math.max(0, middle - down), a * Math.max(0, middle + up));
    }

    private static double square(double x) {
        return x * x;
    }

    private static double ratio(double probability, double freedom) {
        return new ChiSquaredDistribution(freedom).inverseCumulativeProbability(probability) / freedom;
    }
}
