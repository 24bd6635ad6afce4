package io.github.tapwright.sitting;

import io.github.tapwright.instrument.Entry;
import java.util.Optional;

/**
 * The air of the room at a sitting, and how long the instrument has lain in it.
 *
 * @param temperatureCelsius −10 to 50 °C; empty if unknown
 * @param relativeHumidityPercent 1 to 100 %; empty if unknown
 * @param restedHours for how long the wood could settle in this air, 0 to 100,000 h; empty if unknown
 */
public record Air(
        Optional<Double> temperatureCelsius, Optional<Double> relativeHumidityPercent, Optional<Double> restedHours) {

    /** Nobody read the instruments on the wall. */
    public static final Air UNKNOWN = new Air(Optional.empty(), Optional.empty());

    /** Refuses air no maker works in. */
    public Air {
        temperatureCelsius = Entry.figure("the temperature in °C", temperatureCelsius, -10, 50);
        relativeHumidityPercent = Entry.figure("the relative humidity in %", relativeHumidityPercent, 1, 100);
        restedHours = Entry.figure("the hours in this air", restedHours, 0, 100_000);
    }

    /**
     * Air in which nobody knows how long the instrument has lain.
     *
     * @param temperatureCelsius −10 to 50 °C; empty if unknown
     * @param relativeHumidityPercent 1 to 100 %; empty if unknown
     */
    public Air(Optional<Double> temperatureCelsius, Optional<Double> relativeHumidityPercent) {
        this(temperatureCelsius, relativeHumidityPercent, Optional.empty());
    }
}
