package io.github.tapwright.climate;

/**
 * The air of a room.
 *
 * @param temperatureCelsius −10 to 50 °C
 * @param relativeHumidityPercent above 0, up to 100 %
 */
public record RoomClimate(double temperatureCelsius, double relativeHumidityPercent) {

    static final double ZERO_CELSIUS_IN_KELVINS = 273.15;

    private static final double COLDEST = -10;
    private static final double HOTTEST = 50;

    /** Refuses air no maker works in. */
    public RoomClimate {
        if (!(temperatureCelsius >= COLDEST && temperatureCelsius <= HOTTEST)) {
            throw new IllegalArgumentException("the temperature must lie between −10 and 50 °C, was "
                    + temperatureCelsius + ": look at the thermometer and its unit");
        }
        if (!(relativeHumidityPercent > 0 && relativeHumidityPercent <= 100)) {
            throw new IllegalArgumentException("the relative humidity must lie above 0 and up to 100 %, was "
                    + relativeHumidityPercent + ": give it in per cent");
        }
    }

    /**
     * The same from a thermometer in degrees Fahrenheit: (°F − 32)/1.8.
     *
     * @param temperatureFahrenheit 14 to 122 °F
     * @param relativeHumidityPercent above 0, up to 100 %
     * @return the climate
     */
    public static RoomClimate ofFahrenheit(double temperatureFahrenheit, double relativeHumidityPercent) {
        return new RoomClimate((temperatureFahrenheit - 32) / 1.8, relativeHumidityPercent);
    }

    double kelvins() {
        return temperatureCelsius + ZERO_CELSIUS_IN_KELVINS;
    }
}
