package io.github.tapwright.climate;

/**
 * The temperature of a surface on which the air's water begins to settle.
 *
 * <p>Magnus' formula over water: e_s = 6.112·exp(17.62t/(243.12 + t)) hPa; t_d = 243.12γ/(17.62 − γ),
 * γ = ln(RH/100) + 17.62t/(243.12 + t). Source: [WMO8], for −45 to 60 °C.
 * An instrument colder than this that comes out of its case gets wet.
 */
public final class DewPoint {

    private static final double FACTOR = 17.62;
    private static final double OFFSET_CELSIUS = 243.12;
    private static final double AT_ZERO_HECTOPASCALS = 6.112;

    private DewPoint() {}

    /**
     * The dew point.
     *
     * @param climate the air
     * @return in °C, at most its temperature
     */
    public static double celsius(RoomClimate climate) {
        double gamma = Math.log(climate.relativeHumidityPercent() / 100) + exponent(climate.temperatureCelsius());
        return OFFSET_CELSIUS * gamma / (FACTOR - gamma);
    }

    /**
     * The pressure of water vapour in air that can hold no more.
     *
     * @param temperatureCelsius −45 to 60 °C
     * @return in hPa
     */
    public static double saturationHectopascals(double temperatureCelsius) {
        if (!(temperatureCelsius >= -45 && temperatureCelsius <= 60)) {
            throw new IllegalArgumentException("the formula holds from −45 to 60 °C, asked for " + temperatureCelsius);
        }
        return AT_ZERO_HECTOPASCALS * Math.exp(exponent(temperatureCelsius));
    }

    private static double exponent(double celsius) {
        return FACTOR * celsius / (OFFSET_CELSIUS + celsius);
    }
}
