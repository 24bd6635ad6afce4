package io.github.tapwright.validation;

import io.github.tapwright.climate.DewPoint;
import io.github.tapwright.climate.MoistAir;
import io.github.tapwright.climate.RoomClimate;
import java.util.ArrayList;
import java.util.List;

/** Speed of sound, density and dew point of moist air. */
final class AirSection implements Section {

    /** Temperature in °C, relative humidity in %, speed of sound in m/s. */
    private static final double[][] SPEEDS = {
        {0, 1e-6, 331.448},
        {20, 1e-6, 343.359},
        {20, 50, 343.987},
        {20, 100, 344.614},
        {21, 40, 344.478},
        {23, 50, 345.867},
        {25, 50, 347.127},
        {30, 80, 351.006}
    };

    /** Temperature in °C, relative humidity in %, dew point in °C. */
    private static final double[][] DEW_POINTS = {
        {20, 50, 9.255}, {20, 45, 7.698}, {25, 40, 10.457}, {15, 60, 7.292}, {30, 70, 23.927}, {10, 30, -6.811}
    };

    /** Temperature in °C, relative humidity in %, pressure in Pa. */
    private static final double[][] DENSITIES = {{20, 50, 101_325}, {15, 30, 95_000}, {27, 70, 103_000}};

    @Override
    public String title() {
        return "Speed of sound, density and dew point of air";
    }

    @Override
    public String about() {
        return "What temperature and humidity do to the air in the box and in the room.";
    }

    @Override
    public List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        for (double[] row : SPEEDS) {
            checks.add(new Check(
                    "speed of sound, " + air(row),
                    row[2],
                    "m/s",
                    "[Cramer1993], its polynomial worked by another program",
                    Tolerance.within(0.001, "last digit of that calculation"),
                    () -> MoistAir.of(new RoomClimate(row[0], row[1]))
                            .soundSpeedMetresPerSecond()
                            .orElseThrow()));
        }
        for (double[] row : DENSITIES) {
            double expected = (0.34848 * row[2] / 100 - 0.009 * row[1] * Math.exp(0.061 * row[0])) / (273.15 + row[0]);
            checks.add(new Check(
                    "density, " + air(row) + ", " + Numbers.expected(row[2]) + " Pa",
                    expected,
                    "kg/m³",
                    "short formula of [OIML-R111], from memory, to be verified",
                    Tolerance.share(2e-4, expected, "what the short formula is good to"),
                    () -> new MoistAir(new RoomClimate(row[0], row[1]), row[2])
                            .densityKgPerCubicMetre()
                            .orElseThrow()));
        }
        for (double[] row : DEW_POINTS) {
            checks.add(new Check(
                    "dew point, " + air(row),
                    row[2],
                    "°C",
                    "constants of [WMO8] worked by another program",
                    Tolerance.within(5.1e-4, "last digit of that calculation"),
                    () -> DewPoint.celsius(new RoomClimate(row[0], row[1]))));
        }
        return checks;
    }

    private static String air(double[] row) {
        return Numbers.expected(row[0]) + " °C, " + (row[1] < 1 ? "dry" : Numbers.expected(row[1]) + " %");
    }
}
