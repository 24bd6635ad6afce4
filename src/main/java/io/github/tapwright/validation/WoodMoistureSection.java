package io.github.tapwright.validation;

import io.github.tapwright.climate.RoomClimate;
import io.github.tapwright.climate.WoodMoisture;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What the room's air does to wood. */
final class WoodMoistureSection implements Section {

    private static final String TABLE = "climate/emc-table.csv";
    private static final String EQUATION = "the equation is a fit to the table, which is printed to 0.1 %";

    @Override
    public String title() {
        return "Moisture of wood";
    }

    @Override
    public String about() {
        return "Equilibrium moisture content for temperature and relative humidity; for each temperature the cell that agrees worst.";
    }

    @Override
    public List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        for (int fahrenheit = 30; fahrenheit <= 110; fahrenheit += 10) {
            PublishedRow worst = worst(Integer.toString(fahrenheit));
            RoomClimate air = RoomClimate.ofFahrenheit(fahrenheit, worst.number("relative_humidity_percent"));
            checks.add(new Check(
                    fahrenheit + " °F, " + worst.text("relative_humidity_percent") + " % (worst cell of the row)",
                    worst.number("moisture_percent"),
                    "%",
                    worst.text("source"),
                    Tolerance.within(0.1, EQUATION),
                    () -> WoodMoisture.equilibriumPercent(air)));
        }
        double[][] quoted = {{40, 7.7}, {50, 9.2}, {65, 12.0}, {90, 20.5}};
        for (double[] cell : quoted) {
            checks.add(new Check(
                    "70 °F, " + Numbers.expected(cell[0]) + " %",
                    cell[1],
                    "%",
                    "[WoodHandbook2021] table 4-2, single cells as quoted elsewhere",
                    Tolerance.within(0.051, "half a unit of the last digit printed"),
                    () -> WoodMoisture.equilibriumPercentFahrenheit(70, cell[0])));
        }
        return checks;
    }

    private static PublishedRow worst(String fahrenheit) {
        return PublishedTable.rows(TABLE)
                .filter(r -> r.text("temperature_f").equals(fahrenheit))
                .max(Comparator.comparingDouble(r -> Math.abs(WoodMoisture.equilibriumPercent(RoomClimate.ofFahrenheit(
                                r.number("temperature_f"), r.number("relative_humidity_percent")))
                        - r.number("moisture_percent"))))
                .orElseThrow();
    }
}
