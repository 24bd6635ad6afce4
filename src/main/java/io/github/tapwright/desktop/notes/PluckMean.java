package io.github.tapwright.desktop.notes;

import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.statistics.Summary;
import java.util.Arrays;
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
        int string, int count, Optional<Figure> lafMaxDb, Optional<Figure> momentaryLufs, Optional<Figure> sone) {

    /**
     * A mean over plucks.
     *
     * @param mean in its own unit
     * @param estimate the same with its uncertainty; empty after a single pluck
     */
    public record Figure(double mean, Optional<Estimate> estimate) {}

    static List<PluckMean> of(PluckRun run) {
        return IntStream.rangeClosed(1, run.tuning().openHz().size())
                .mapToObj(s -> of(
                        s,
                        run.meaningful().stream()
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

    private static Optional<Figure> summary(List<Pluck> plucks, Function<Pluck, Optional<Double>> value) {
        double[] values = plucks.stream()
                .flatMap(p -> value.apply(p).stream())
                .mapToDouble(v -> v)
                .toArray();
        if (values.length < 2) {
            return Arrays.stream(values)
                    .mapToObj(v -> new Figure(v, Optional.empty()))
                    .findFirst();
        }
        Estimate mean = Summary.of(values).ofMean();
        return Optional.of(new Figure(mean.value(), Optional.of(mean)));
    }

    /** A mean with half its 95 % interval; a single pluck has none. */
    static String text(Optional<Figure> figure) {
        return figure.map(f -> Figures.text(f.mean(), 1)
                        + f.estimate()
                                .map(e -> " ± " + Figures.text(e.halfWidth95(), 1))
                                .orElse(", one pluck: no interval"))
                .orElse("–");
    }
}
