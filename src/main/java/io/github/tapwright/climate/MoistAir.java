package io.github.tapwright.climate;

import java.util.OptionalDouble;

/**
 * Air with its pressure: how fast it carries sound and how heavy it is.
 *
 * <p>Mole fraction of water x_w = h·f·p_sv/p, p_sv = exp(1.2378847·10⁻⁵T² − 1.9121316·10⁻²T + 33.93711047 − 6343.1645/T) Pa,
 * f = 1.00062 + 3.14·10⁻⁸p + 5.6·10⁻⁷t². Sources: [CIPM2007], [Cramer1993]. Carbon dioxide is taken as 0.04 %.
 *
 * @param climate temperature and humidity
 * @param pressurePascals 60 000 to 110 000 Pa, at the place (not reduced to the sea)
 */
public record MoistAir(RoomClimate climate, double pressurePascals) {

    /** One standard atmosphere; a wrong pressure hardly changes the speed of sound. */
    public static final double STANDARD_PASCALS = 101_325;

    private static final double CARBON_DIOXIDE = 0.0004;
    private static final double GAS_CONSTANT = 8.314472;
    private static final double DRY_AIR_KG_PER_MOLE = 28.96546e-3;
    private static final double WATER_KG_PER_MOLE = 18.01528e-3;

    /** Refuses pressures no workshop has. */
    public MoistAir {
        if (!(pressurePascals >= 60_000 && pressurePascals <= 110_000)) {
            throw new IllegalArgumentException("the pressure must lie between 60 000 and 110 000 Pa, was "
                    + pressurePascals + ": a barometer in hPa needs two noughts more");
        }
    }

    /**
     * Air at standard pressure.
     *
     * @param climate temperature and humidity
     * @return the air
     */
    public static MoistAir of(RoomClimate climate) {
        return new MoistAir(climate, STANDARD_PASCALS);
    }

    /**
     * The speed of sound by Cramer's polynomial. Source: [Cramer1993], for 0 to 30 °C, 75 to 102 kPa.
     *
     * @return in m/s; empty outside that range
     */
    public OptionalDouble soundSpeedMetresPerSecond() {
        double t = climate.temperatureCelsius();
        double p = pressurePascals;
        if (t < 0 || t > 30 || p < 75_000 || p > 102_000) {
            return OptionalDouble.empty();
        }
        double w = waterFraction();
        double c = CARBON_DIOXIDE;
        return OptionalDouble.of(331.5024
                + (0.603055 - 0.000528 * t) * t
                + (51.471935 + (0.1495874 - 0.000782 * t) * t) * w
                + (-1.82e-7 + (3.73e-8 - 2.93e-10 * t) * t) * p
                + (-85.20931 + (-0.228525 + 5.91e-5 * t) * t) * c
                - 2.835149 * w * w
                - 2.15e-13 * p * p
                + 29.179762 * c * c
                + 0.000486 * w * p * c);
    }

    /**
     * The density: ρ = pM_a/(ZRT)·(1 − x_w(1 − M_w/M_a)), Z near 1. Source: [CIPM2007], for 15 to 27 °C.
     *
     * @return in kg/m³; empty outside that range
     */
    public OptionalDouble densityKgPerCubicMetre() {
        double t = climate.temperatureCelsius();
        if (t < 15 || t > 27) {
            return OptionalDouble.empty();
        }
        double w = waterFraction();
        double dry = pressurePascals * DRY_AIR_KG_PER_MOLE / (compressibility(w) * GAS_CONSTANT * climate.kelvins());
        return OptionalDouble.of(dry * (1 - w * (1 - WATER_KG_PER_MOLE / DRY_AIR_KG_PER_MOLE)));
    }

    private double compressibility(double w) {
        double t = climate.temperatureCelsius();
        double ratio = pressurePascals / climate.kelvins();
        return 1
                - ratio
                        * (1.58123e-6
                                + (-2.9331e-8 + 1.1043e-10 * t) * t
                                + (5.707e-6 - 2.051e-8 * t) * w
                                + (1.9898e-4 - 2.376e-6 * t) * w * w)
                + ratio * ratio * (1.83e-11 - 0.765e-8 * w * w);
    }

    private double waterFraction() {
        double t = climate.temperatureCelsius();
        double kelvins = climate.kelvins();
        double saturation =
                Math.exp(1.2378847e-5 * kelvins * kelvins - 1.9121316e-2 * kelvins + 33.93711047 - 6343.1645 / kelvins);
        double enhancement = 1.00062 + 3.14e-8 * pressurePascals + 5.6e-7 * t * t;
        return climate.relativeHumidityPercent() / 100 * enhancement * saturation / pressurePascals;
    }
}
