package io.github.tapwright.comparison.trend;

import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.statistics.Median;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * One quantity on one day: the median over the day's sittings, because a drift of months does not show within hours, and figures
 * minutes apart would draw slopes of thousands of hertz a month.
 *
 * @param day where the workshop is
 * @param measured as measured
 * @param corrected in the common air
 * @param ownVariance what the day's sittings are unsure by themselves, setting up again apart: the mean of their u²
 * @param humidityPercent relative humidity; empty unless known for all the day's sittings
 */
record DayFigure(
        LocalDate day, double measured, double corrected, double ownVariance, Optional<Double> humidityPercent) {

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
                figures.stream()
                        .mapToDouble(
                                f -> f.found().standardUncertainty() * f.found().standardUncertainty())
                        .average()
                        .orElseThrow(),
                known ? Optional.of(median(figures, f -> f.humidityPercent().orElseThrow())) : Optional.empty());
    }

    private static double median(List<SittingFigure> figures, ToDoubleFunction<SittingFigure> of) {
        return Median.of(figures.stream().mapToDouble(of).toArray());
    }
}
