package io.github.tapwright.comparison.group;

import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.instrument.ShopNumber;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * One instrument in a group: the mean over its sittings, in the common air.
 *
 * @param instrument which
 * @param sittings its figures, at least one, oldest first
 */
public record InstrumentMean(ShopNumber instrument, List<SittingFigure> sittings) {

    /** Keeps a copy and refuses an instrument without figures. */
    public InstrumentMean {
        sittings = List.copyOf(sittings);
        if (sittings.isEmpty()) {
            throw new IllegalArgumentException("instrument " + instrument + " has no figure");
        }
    }

    /**
     * The instrument's figure.
     *
     * @return mean of the corrected figures, in their unit
     */
    public double value() {
        return mean(SittingFigure::corrected);
    }

    /** What one cause contributed to the correction, on average. */
    double added(String cause) {
        return mean(s -> s.added(cause));
    }

    private double mean(ToDoubleFunction<SittingFigure> of) {
        return sittings.stream().mapToDouble(of).average().orElseThrow();
    }
}
