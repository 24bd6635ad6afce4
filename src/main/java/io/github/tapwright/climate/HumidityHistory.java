package io.github.tapwright.climate;

import java.util.List;

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
     * @param dampness in the history's scale, finite
     * @param frequencyHz of the resonance, positive
     */
    public record Point(double dampness, double frequencyHz) {

        /** Refuses what is no measurement. */
        public Point {
            if (!Double.isFinite(dampness) || !(frequencyHz > 0 && frequencyHz < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("a sitting needs its dampness and a frequency, got " + dampness
                        + " and " + frequencyHz + " Hz");
            }
        }
    }

    /** Keeps a copy. */
    public HumidityHistory {
        points = List.copyOf(points);
    }

    double range() {
        return points.stream().mapToDouble(Point::dampness).max().orElse(0)
                - points.stream().mapToDouble(Point::dampness).min().orElse(0);
    }
}
