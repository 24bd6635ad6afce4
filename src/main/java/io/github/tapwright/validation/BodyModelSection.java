package io.github.tapwright.validation;

import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.body.Air;
import io.github.tapwright.mode.body.BodyModel;
import io.github.tapwright.mode.body.BodyQuantity;
import io.github.tapwright.mode.body.BodyReadings;
import io.github.tapwright.mode.body.CoupledBody;
import io.github.tapwright.mode.body.HelmholtzFrequency;
import io.github.tapwright.mode.body.Plate;
import io.github.tapwright.mode.body.Soundhole;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.MonteCarlo;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;

/** Top, back and air as two and three coupled masses, forward and back again. */
final class BodyModelSection implements Section {

    private static final String EIGHT = "eight digits, on which two programs agree";
    private static final String SIX = "six digits: what was put in is rounded to about eight";
    private static final double LOSSLESS = Double.POSITIVE_INFINITY;

    @Override
    public String title() {
        return "Two- and three-mass models of the body";
    }

    @Override
    public String about() {
        return "Resonances of top, air and back from masses, areas and springs; and from resonances with the hole open, covered"
                + " and with a mass stuck on back to the parts. ρ = 1.2 kg/m³, c = 343 m/s.";
    }

    @Override
    public List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        PublishedTable.rows("body/two-piston.csv").forEach(row -> two(checks, row));
        three(checks);
        damped(checks);
        back(checks);
        PublishedTable.rows("body/helmholtz.csv")
                .forEach(row -> add(
                        checks,
                        "air in the hole of a box of " + row.text("box") + ", thin wall",
                        row,
                        "thin_wall_hz",
                        "Hz",
                        () -> new HelmholtzFrequency(row.number("hole_radius_m"), 0, Math.PI / 2)
                                .hz(Air.ROUND, row.number("volume_m3"))));
        return checks;
    }

    private static void two(List<Check> checks, PublishedRow row) {
        CoupledBody body = new CoupledBody(
                Air.ROUND,
                row.number("volume_m3"),
                new Soundhole(row.number("hole_radius_m"), row.number("top_thickness_m"), LOSSLESS),
                Plate.lossless(row.number("top_mass_kg"), row.number("top_area_m2"), row.number("top_frequency_hz")),
                Optional.empty(),
                HoleState.OPEN);
        String name = "body " + row.text("body") + ", ";
        add(checks, name + "air alone", row, "helmholtz_hz", "Hz", body::helmholtzFrequencyHz);
        add(checks, name + "top on air", row, "air_spring_hz", "Hz", () -> body.airSpringFrequencyHz(body.top()));
        add(checks, name + "lower", row, "lower_hz", "Hz", () -> hz(body, 0));
        add(checks, name + "upper", row, "upper_hz", "Hz", () -> hz(body, 1));
        add(checks, name + "hole covered", row, "closed_hz", "Hz", () -> hz(body.with(HoleState.COVERED), 0));
        add(
                checks,
                name + "flow at the lower",
                row,
                "lower_flow",
                "",
                () -> body.volumeRatios(hz(body, 0)).get(1));
        add(
                checks,
                name + "flow at the upper",
                row,
                "upper_flow",
                "",
                () -> body.volumeRatios(hz(body, 1)).get(1));
    }

    private static void three(List<Check> checks) {
        CoupledBody body = new CoupledBody(
                Air.ROUND,
                0.0140,
                new Soundhole(0.0425, 0.0025, LOSSLESS),
                Plate.lossless(0.080, 0.040, 165),
                Optional.of(Plate.lossless(0.150, 0.035, 200)),
                HoleState.OPEN);
        List<PublishedRow> rows = PublishedTable.rows("body/three-piston.csv").toList();
        for (int i = 0; i < rows.size(); i++) {
            int index = i;
            String name = "body A with a live back, resonance " + (i + 1);
            add(checks, name, rows.get(i), "frequency_hz", "Hz", () -> hz(body, index));
            if (i < 2) {
                add(
                        checks,
                        name + ", hole covered",
                        rows.get(i),
                        "covered_hz",
                        "Hz",
                        () -> hz(body.with(HoleState.COVERED), index));
            }
        }
    }

    private static void damped(List<Check> checks) {
        CoupledBody body = new CoupledBody(
                Air.ROUND,
                0.0140,
                new Soundhole(0.0425, 0.0025, 50),
                new Plate(0.080, 0.040, 165, 30),
                Optional.empty(),
                HoleState.OPEN);
        List<PublishedRow> rows = PublishedTable.rows("body/damped-poles.csv").toList();
        for (int i = 0; i < rows.size(); i++) {
            int index = i;
            String name = "body A with losses, " + rows.get(i).text("pole");
            add(checks, name, rows.get(i), "frequency_hz", "Hz", () -> hz(body, index));
            add(
                    checks,
                    name + ", Q",
                    rows.get(i),
                    "q",
                    "",
                    () -> body.poles().get(index).q());
            add(
                    checks,
                    name + ", decay time",
                    rows.get(i),
                    "decay_time_s",
                    "s",
                    () -> body.poles().get(index).decayTimeSeconds());
        }
    }

    /** Body A of the tables: 127.118 Hz, 165 Hz, 80 g, from resonances with eight digits. */
    private static void back(List<Check> checks) {
        PublishedRow a = PublishedTable.row("body/two-piston.csv", "body", "A");
        PublishedTable.rows("body/added-mass.csv").forEach(row -> {
            BodyReadings readings = new BodyReadings(
                    List.of(exactly(a.number("lower_hz")), exactly(a.number("upper_hz"))),
                    Optional.of(List.of(exactly(a.number("closed_hz")))),
                    Optional.of(new BodyReadings.Load(
                            exactly(row.number("added_g") / 1000),
                            false,
                            List.of(exactly(row.number("lower_hz")), exactly(row.number("upper_hz"))))),
                    new BodyReadings.Measures(
                            Optional.of(exactly(a.number("volume_m3"))),
                            Optional.empty(),
                            Optional.empty(),
                            Air.ROUND));
            String with = " with " + row.text("added_g") + " g";
            add(checks, "air alone, found" + with, a, "helmholtz_hz", "Hz", readings, BodyQuantity.HELMHOLTZ);
            add(checks, "top alone, found" + with, a, "top_frequency_hz", "Hz", readings, BodyQuantity.TOP_ALONE);
            add(checks, "mass of the top, found" + with, a, "top_mass_kg", "kg", readings, BodyQuantity.TOP_MASS);
            add(checks, "area of the top, found" + with, a, "top_area_m2", "m²", readings, BodyQuantity.TOP_AREA);
        });
    }

    private static Estimate exactly(double value) {
        return Estimate.of(value, 0);
    }

    private static double hz(CoupledBody body, int index) {
        return body.poles().get(index).frequencyHz();
    }

    private static void add(
            List<Check> checks,
            String quantity,
            PublishedRow row,
            String column,
            String unit,
            BodyReadings readings,
            BodyQuantity asked) {
        checks.add(new Check(
                quantity,
                row.number(column),
                unit,
                row.text("source"),
                Tolerance.share(1e-6, row.number(column), SIX),
                () -> BodyModel.of(readings, new MonteCarlo(1000, 1))
                        .answerTo(asked)
                        .inferred()
                        .orElseThrow()
                        .value()));
    }

    private static void add(
            List<Check> checks,
            String quantity,
            PublishedRow row,
            String column,
            String unit,
            DoubleSupplier computation) {
        checks.add(new Check(
                quantity,
                row.number(column),
                unit,
                row.text("source"),
                Tolerance.share(2e-8, row.number(column), EIGHT),
                computation));
    }
}
