package io.github.tapwright.comparison.trend;

import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.LinearFit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The drift with humidity taken out by the figures themselves: y = b₀ + b₁·month + b₂·humidity, least squares, as measured.
 *
 * @param perMonth b₁ in the figure's unit
 * @param perPoint b₂ in the figure's unit per point of relative humidity
 */
public record HumidityRegression(Estimate perMonth, Estimate perPoint) {

    private static final int FEWEST = 6;
    /** Beyond this, time and humidity ran so much together that least squares tells them apart by accident. */
    private static final double TOGETHER = 0.9;

    /** Empty with fewer than six days, unknown or constant humidity, or humidity that ran with time. */
    static Optional<HumidityRegression> of(double[] months, List<DayFigure> days) {
        if (days.size() < FEWEST
                || days.stream().anyMatch(f -> f.humidityPercent().isEmpty())) {
            return Optional.empty();
        }
        double[] humidity = days.stream()
                .mapToDouble(f -> f.humidityPercent().orElseThrow())
                .toArray();
        if (!(Math.abs(correlation(months, humidity)) < TOGETHER)) {
            return Optional.empty();
        }
        double[] values = days.stream().mapToDouble(DayFigure::measured).toArray();
        LinearFit fit = LinearFit.of(values, months, humidity);
        return Optional.of(new HumidityRegression(
                fit.coefficients().get(1), fit.coefficients().get(2)));
    }

    /** Pearson's; 1 where either does not vary, because then nothing can be told apart. */
    static double correlation(double[] x, double[] y) {
        double meanX = Arrays.stream(x).average().orElse(0);
        double meanY = Arrays.stream(y).average().orElse(0);
        double xx = 0;
        double yy = 0;
        double xy = 0;
        for (int i = 0; i < x.length; i++) {
            xx += (x[i] - meanX) * (x[i] - meanX);
            yy += (y[i] - meanY) * (y[i] - meanY);
            xy += (x[i] - meanX) * (y[i] - meanY);
        }
        return xx > 0 && yy > 0 ? xy / Math.sqrt(xx * yy) : 1;
    }
}
