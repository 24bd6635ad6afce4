package io.github.tapwright.comparison;

import io.github.tapwright.climate.HumiditySensitivity;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Median;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The air all sittings of a question are compared in: the medians of the temperatures and humidities that were written down, so that
 * as little as possible is corrected.
 *
 * @param air temperature and humidity, empty where no sitting has it
 */
public record CommonAir(Air air) {

    /**
     * The air in the middle of some sittings.
     *
     * @param sittings any
     * @return their common air
     */
    public static CommonAir of(List<SittingOutline> sittings) {
        return new CommonAir(
                new Air(median(sittings, Air::temperatureCelsius), median(sittings, Air::relativeHumidityPercent)));
    }

    private static Optional<Double> median(List<SittingOutline> sittings, Function<Air, Optional<Double>> of) {
        double[] known = sittings.stream()
                .flatMap(s -> of.apply(s.conditions().air()).stream())
                .mapToDouble(x -> x)
                .toArray();
        return known.length == 0 ? Optional.empty() : Optional.of(Median.of(known));
    }

    /**
     * A figure of a sitting, as measured and as it would have been in this air.
     *
     * @param subject what of the sitting; only frequencies are corrected
     * @param sitting of taps
     * @param sensitivity how far humidity moves the instrument's resonances
     * @return the figure; empty if the sitting has none
     */
    public Optional<SittingFigure> figure(Subject subject, SittingOutline sitting, HumiditySensitivity sensitivity) {
        return figure(subject, Subject.named(sitting), sitting, sensitivity);
    }

    /**
     * As {@link #figure(Subject, SittingOutline, HumiditySensitivity)}, for many subjects of one sitting.
     *
     * @param subject a resonance's quantity
     * @param named the sitting's {@link Subject#named}
     * @param sitting of taps
     * @param sensitivity how far humidity moves the instrument's resonances
     * @return the figure; empty if the sitting has none
     */
    public Optional<SittingFigure> figure(
            Subject subject, Map<ModeName, Resonance> named, SittingOutline sitting, HumiditySensitivity sensitivity) {
        return subject.in(named).map(estimate -> {
            Optional<Correction> correction = subject.quantity() == Quantity.FREQUENCY
                    ? ClimateCorrection.of(
                            estimate.value(),
                            subject.resonance(),
                            sitting.conditions().air(),
                            air,
                            sensitivity)
                    : Optional.empty();
            return SittingFigure.of(sitting, estimate, correction);
        });
    }
}
