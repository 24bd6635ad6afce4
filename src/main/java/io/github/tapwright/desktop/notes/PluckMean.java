package io.github.tapwright.desktop.notes;

import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.statistics.Summary;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * The plucks of one open string.
 *
 * @param string which string, 1 the highest
 * @param count how many plucks
 * @param lafMaxDb mean of their levels; empty if none has one
 * @param momentaryLufs mean of their greatest momentary loudness
 * @param sone mean of their greatest loudness; empty without a calibration
 */
public record PluckMean(
        int string, int count, Optional<Summary> lafMaxDb, Optional<Summary> momentaryLufs, Optional<Summary> sone) {

    static List<PluckMean> of(PluckRun run) {
        return IntStream.rangeClosed(1, run.tuning().openHz().size())
                .mapToObj(s -> of(
                        s,
                        run.plucks().stream()
                                .filter(p -> p.string().equals(Optional.of(s)))
                                .toList()))
                .filter(m -> m.count > 0)
                .toList();
    }

    private static PluckMean of(int string, List<Pluck> plucks) {
        return new PluckMean(
                string,
                plucks.size(),
                summary(plucks, Pluck::lafMaxDb),
                summary(plucks, Pluck::momentaryMaxLufs),
                summary(plucks, Pluck::maximumSone));
    }

    private static Optional<Summary> summary(List<Pluck> plucks, Function<Pluck, Optional<Double>> value) {
        double[] values = plucks.stream()
                .flatMap(p -> value.apply(p).stream())
                .mapToDouble(v -> v)
                .toArray();
        return values.length == 0 ? Optional.empty() : Optional.of(Summary.of(values));
    }

    /** A mean with half its 95 % interval; a single pluck has none. */
    static String text(Optional<Summary> summary) {
        return summary.map(s -> {
                    if (s.count() < 2) {
                        return Figures.text(s.mean(), 1) + ", one pluck: no interval";
                    }
                    Estimate mean = s.ofMean();
                    return Figures.text(mean.value(), 1) + " ± " + Figures.text(mean.halfWidth95(), 1);
                })
                .orElse("–");
    }
}
