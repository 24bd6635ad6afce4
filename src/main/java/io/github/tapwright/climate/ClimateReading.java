package io.github.tapwright.climate;

/**
 * The air as instruments on the wall showed it.
 *
 * @param climate what they showed
 * @param temperatureUncertaintyKelvin standard uncertainty of the thermometer, not negative; 0.3 K for one of the better kind
 *     (common practice, no source)
 * @param humidityUncertaintyPercent standard uncertainty of the hygrometer in points of relative humidity, not negative; 2 for a
 *     checked one, 5 for one never checked (common practice, no source)
 */
public record ClimateReading(
        RoomClimate climate, double temperatureUncertaintyKelvin, double humidityUncertaintyPercent) {

    /** Refuses uncertainties that are none. */
    public ClimateReading {
        if (!(temperatureUncertaintyKelvin >= 0 && temperatureUncertaintyKelvin < Double.POSITIVE_INFINITY)
                || !(humidityUncertaintyPercent >= 0 && humidityUncertaintyPercent < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("uncertainties must be finite and not negative, got "
                    + temperatureUncertaintyKelvin + " K and " + humidityUncertaintyPercent + " %");
        }
    }
}
