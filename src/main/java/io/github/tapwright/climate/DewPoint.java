package io.github.tapwright.climate;

/**
 * The temperature of a surface on which the air's water begins to settle.
 *
 * <p>Magnus' formula over water, e_s ∝ exp(17.62t/(243.12 + t)): t_d = 243.12γ/(17.62 − γ),
 * γ = ln(RH/100) + 17.62t/(243.12 + t). Source: [WMO8], for −45 to 60 °C.
 * An instrument colder than this that comes out of its case gets wet.
 */
public final class DewPoint {

    private static final double FACTOR = 17.62;
    private static final double OFFSET_CELSIUS = 243.12;

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

    private static double exponent(double celsius) {
        return FACTOR * celsius / (OFFSET_CELSIUS + celsius);
    }
}
