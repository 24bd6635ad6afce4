package io.github.tapwright.comparison.trend;

import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Median;
import io.github.tapwright.statistics.UncertaintyBudget;
import io.github.tapwright.statistics.UncertaintyBudget.Component;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * One quantity on one day: the median over the day's sittings, because a drift of months does not show within hours, and figures
 * minutes apart would draw slopes of thousands of hertz a month.
 *
 * @param day where the workshop is
 * @param measured as measured
 * @param corrected in the common air
 * @param own what one of the day's sittings is unsure by itself, setting up again apart: 0 with u² their mean, see {@link #onAverage}
 * @param humidityPercent relative humidity; empty unless known for all the day's sittings
 */
record DayFigure(LocalDate day, double measured, double corrected, Estimate own, Optional<Double> humidityPercent) {

    /** One for each day, oldest first. */
    static List<DayFigure> of(List<SittingFigure> figures, ZoneId zone) {
        return figures.stream()
                .collect(Collectors.groupingBy(
                        f -> LocalDate.ofInstant(f.takenAt().instant(), zone), TreeMap::new, Collectors.toList()))
                .entrySet()
                .stream()
                .map(e -> of(e.getKey(), e.getValue()))
                .toList();
    }

    private static DayFigure of(LocalDate day, List<SittingFigure> figures) {
        boolean known = figures.stream().allMatch(f -> f.humidityPercent().isPresent());
        return new DayFigure(
                day,
                median(figures, SittingFigure::measured),
                median(figures, SittingFigure::corrected),
                onAverage(figures.stream().map(SittingFigure::found).toList()),
                known ? Optional.of(median(figures, f -> f.humidityPercent().orElseThrow())) : Optional.empty());
    }

    /** What one of several is unsure by: 0 with the mean of their u², ν = (Σu²)²/Σ(u⁴/ν) by Welch and Satterthwaite. */
    static Estimate onAverage(List<Estimate> several) {
        double each = 1 / Math.sqrt(several.size());
        Component[] parts = IntStream.range(0, several.size())
                .mapToObj(i -> new Component("sitting " + i, several.get(i), each))
                .toArray(Component[]::new);
        return UncertaintyBudget.independent(0, parts).combined();
    }

    private static double median(List<SittingFigure> figures, ToDoubleFunction<SittingFigure> of) {
        return Median.of(figures.stream().mapToDouble(of).toArray());
    }
}
