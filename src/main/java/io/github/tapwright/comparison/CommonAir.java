package io.github.tapwright.comparison;

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
     * @param subject what of the sitting; frequencies are corrected, and decay times as far as they follow from them
     * @param sitting of taps
     * @param sensitivities how far humidity moves each of the instrument's resonances
     * @return the figure; empty if the sitting has none
     */
    public Optional<SittingFigure> figure(
            Subject subject, SittingOutline sitting, HumiditySensitivities sensitivities) {
        return figure(subject, Subject.named(sitting), sitting, sensitivities);
    }

    /**
     * As {@link #figure(Subject, SittingOutline, HumiditySensitivities)}, for many subjects of one sitting.
     *
     * @param subject a resonance's quantity
     * @param named the sitting's {@link Subject#named}
     * @param sitting of taps
     * @param sensitivities how far humidity moves each of the instrument's resonances
     * @return the figure; empty if the sitting has none
     */
    public Optional<SittingFigure> figure(
            Subject subject,
            Map<ModeName, Resonance> named,
            SittingOutline sitting,
            HumiditySensitivities sensitivities) {
        return subject.in(named)
                .map(estimate -> SittingFigure.of(
                        sitting, estimate, correction(subject, estimate.value(), named, sitting, sensitivities)));
    }

    private Optional<Correction> correction(
            Subject subject,
            double value,
            Map<ModeName, Resonance> named,
            SittingOutline sitting,
            HumiditySensitivities sensitivities) {
        return switch (subject.quantity()) {
            case FREQUENCY -> ofFrequency(value, subject.resonance(), sitting, sensitivities);
            case DECAY_TIME -> ofDecay(value, subject.resonance(), named, sitting, sensitivities);
            case Q, LEVEL -> Optional.empty();
        };
    }

    private Optional<Correction> ofFrequency(
            double hz, Optional<ModeName> mode, SittingOutline sitting, HumiditySensitivities sensitivities) {
        return ClimateCorrection.of(hz, mode, sitting.conditions().air(), air, sensitivities);
    }

    private Optional<Correction> ofDecay(
            double seconds,
            Optional<ModeName> mode,
            Map<ModeName, Resonance> named,
            SittingOutline sitting,
            HumiditySensitivities sensitivities) {
        return mode.flatMap(m -> Optional.ofNullable(named.get(m)))
                .map(r -> r.frequencyHz().value())
                .flatMap(hz -> ofFrequency(hz, mode, sitting, sensitivities).map(c -> c.ofDecay(seconds, hz)));
    }
}
