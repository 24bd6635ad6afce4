package io.github.tapwright.climate;

/**
 * How much water wood holds once it has had time to suit the air around it.
 *
 * <p>M = (1800/W)·[Kh/(1 − Kh) + (K₁Kh + 2K₁K₂K²h²)/(1 + K₁Kh + K₁K₂K²h²)] in per cent of the dry mass, h the relative humidity as a
 * fraction, W, K, K₁ and K₂ parabolas in the temperature. Source: [WoodHandbook2021], eq. 4-5; in degrees Fahrenheit
 * [WoodHandbook2010]. The average of many woods: one species may lie half a per cent off, and wood that dries holds more than wood
 * that takes water up, at the same humidity. A lacquered instrument takes hours to days to get there ({@link Settling}).
 */
public final class WoodMoisture {

    private static final Parabola W = new Parabola(349, 1.29, 0.0135);
    private static final Parabola K = new Parabola(0.805, 0.000736, -0.00000273);
    private static final Parabola K1 = new Parabola(6.27, -0.00938, -0.000303);
    private static final Parabola K2 = new Parabola(1.91, 0.0407, -0.000293);

    private static final Parabola W_FAHRENHEIT = new Parabola(330, 0.452, 0.00415);
    private static final Parabola K_FAHRENHEIT = new Parabola(0.791, 4.63e-4, -8.44e-7);
    private static final Parabola K1_FAHRENHEIT = new Parabola(6.34, 7.75e-4, -9.35e-5);
    private static final Parabola K2_FAHRENHEIT = new Parabola(1.09, 2.84e-2, -9.04e-5);

    private WoodMoisture() {}

    /**
     * The equilibrium moisture content.
     *
     * @param climate the air
     * @return per cent of the dry mass
     */
    public static double equilibriumPercent(RoomClimate climate) {
        double t = climate.temperatureCelsius();
        return percent(climate.relativeHumidityPercent() / 100, W.at(t), K.at(t), K1.at(t), K2.at(t));
    }

    /**
     * The same by the coefficients for degrees Fahrenheit, which differ by some 0.01 %.
     *
     * @param temperatureFahrenheit 14 to 122 °F
     * @param relativeHumidityPercent above 0, up to 100 %
     * @return per cent of the dry mass
     */
    public static double equilibriumPercentFahrenheit(double temperatureFahrenheit, double relativeHumidityPercent) {
        RoomClimate within = RoomClimate.ofFahrenheit(temperatureFahrenheit, relativeHumidityPercent);
        double t = temperatureFahrenheit;
        return percent(
                within.relativeHumidityPercent() / 100,
                W_FAHRENHEIT.at(t),
                K_FAHRENHEIT.at(t),
                K1_FAHRENHEIT.at(t),
                K2_FAHRENHEIT.at(t));
    }

    private static double percent(double humidity, double w, double k, double k1, double k2) {
        double kh = k * humidity;
        double first = k1 * kh;
        double second = k1 * k2 * kh * kh;
        return 1800 / w * (kh / (1 - kh) + (first + 2 * second) / (1 + first + second));
    }

    private record Parabola(double constant, double slope, double curvature) {
        double at(double t) {
            return constant + (slope + curvature * t) * t;
        }
    }
}
