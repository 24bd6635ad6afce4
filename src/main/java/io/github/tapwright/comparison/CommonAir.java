package io.github.tapwright.comparison;

import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Median;
import java.util.List;
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
     * A sitting brought to this air.
     *
     * @param sitting of taps
     * @param sensitivities how far humidity moves each of the instrument's resonances
     * @return its figures, as measured and as they would have been
     */
    public TapsInAir taps(SittingOutline sitting, HumiditySensitivities sensitivities) {
        return TapsInAir.of(sitting, this, sensitivities);
    }
}
