package io.github.tapwright.climate;

import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * One resonance of one instrument, measured in different weather, with nothing else changed.
 *
 * @param scale by what dampness is counted
 * @param points in any order
 */
public record HumidityHistory(HumidityScale scale, List<Point> points) {

    /**
     * One sitting.
     *
     * @param days when, counted from any one day, finite
     * @param dampness in the history's scale, finite
     * @param frequencyHz of the resonance, positive
     */
    public record Point(double days, double dampness, double frequencyHz) {

        /** Refuses what is no measurement. */
        public Point {
            if (!Double.isFinite(days)
                    || !Double.isFinite(dampness)
                    || !(frequencyHz > 0 && frequencyHz < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("a sitting needs its day, dampness and a frequency, got day " + days
                        + ", " + dampness + " and " + frequencyHz + " Hz");
            }
        }
    }

    /** Keeps a copy. */
    public HumidityHistory {
        points = List.copyOf(points);
    }

    /** What is left of the dampness once its own line over time is taken out. */
    double[] dampnessBesideTime() {
        return besideTime(Point::dampness);
    }

    /** The same of the logarithms of the frequencies. */
    double[] logarithmsBesideTime() {
        return besideTime(p -> Math.log(p.frequencyHz()));
    }

    /** How far apart the dampest and the driest lie. */
    double range() {
        return range(points.stream().mapToDouble(Point::dampness).toArray());
    }

    /** How far apart they lie once the line over time is taken out. */
    double rangeBesideTime() {
        return range(dampnessBesideTime());
    }

    private static double range(double[] values) {
        DoubleSummaryStatistics all = Arrays.stream(values).summaryStatistics();
        return values.length == 0 ? 0 : all.getMax() - all.getMin();
    }

    /** Residuals of a straight line over the days; of their mean where all are of one time. */
    private double[] besideTime(ToDoubleFunction<Point> of) {
        double middle = mean(Point::days);
        double mean = mean(of);
        double tt = 0;
        double ty = 0;
        for (Point point : points) {
            tt += (point.days() - middle) * (point.days() - middle);
            ty += (point.days() - middle) * (of.applyAsDouble(point) - mean);
        }
        double perDay = tt > 0 ? ty / tt : 0;
        return points.stream()
                .mapToDouble(p -> of.applyAsDouble(p) - mean - perDay * (p.days() - middle))
                .toArray();
    }

    private double mean(ToDoubleFunction<Point> of) {
        return points.stream().mapToDouble(of).average().orElse(0);
    }
}
