package io.github.tapwright.comparison;

import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import java.util.Optional;

/**
 * One figure of one sitting.
 *
 * @param sitting which sitting
 * @param takenAt when
 * @param measured the figure as measured, in its unit
 * @param correction what was added to bring it to the common air; empty if nothing was
 * @param humidityPercent relative humidity at the sitting; empty if unknown
 */
public record SittingFigure(
        SittingId sitting,
        Moment takenAt,
        double measured,
        Optional<Correction> correction,
        Optional<Double> humidityPercent) {

    /**
     * A figure of a sitting.
     *
     * @param sitting which
     * @param measured the figure as measured
     * @param correction what to add
     * @return the figure
     */
    public static SittingFigure of(SittingOutline sitting, double measured, Optional<Correction> correction) {
        return new SittingFigure(
                sitting.id(),
                sitting.takenAt(),
                measured,
                correction,
                sitting.conditions().air().relativeHumidityPercent());
    }

    /**
     * The figure in the common air.
     *
     * @return as measured where nothing was to be corrected
     */
    public double corrected() {
        return measured + correction.map(Correction::added).orElse(0.0);
    }

    /**
     * What one cause contributed to the correction.
     *
     * @param cause such as "humidity"
     * @return in the figure's unit, 0 if nothing
     */
    public double added(String cause) {
        return correction.map(c -> c.added(cause)).orElse(0.0);
    }
}
