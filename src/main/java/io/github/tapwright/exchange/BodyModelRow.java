package io.github.tapwright.exchange;

import io.github.tapwright.comparison.body.FittedBody;
import io.github.tapwright.mode.body.Answer;
import io.github.tapwright.mode.body.BodyChange;
import io.github.tapwright.mode.body.Prediction;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.Sitting;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One line of a fitted body's table.
 *
 * @param body whose
 * @param change what was changed; empty for the body as it is
 * @param quantity what the figure is
 * @param unit its unit; empty for a pure number
 * @param answer the figure, or why there is none
 */
record BodyModelRow(FittedBody body, Optional<BodyChange> change, String quantity, String unit, Answer answer) {

    private static final List<Field<BodyModelRow>> FIGURE = Stream.concat(
                    Stream.of(
                            Field.<BodyModelRow>of("quantity", BodyModelRow::quantity),
                            Field.<BodyModelRow>of("unit", BodyModelRow::unit)),
                    Field.within(BodyModelJson.ANSWER, BodyModelRow::answer).stream())
            .toList();

    private static final List<Field<BodyModelRow>> CIRCUMSTANCES = List.of(
            Field.maybe("what_if_mass_kg", r -> r.change.map(BodyChange::massKilograms)),
            Field.maybe("what_if_stiffness_share", r -> r.change.map(BodyChange::stiffnessShare)),
            Field.maybe("what_if_hole_radius_m", r -> r.change.map(BodyChange::holeRadiusMetres)),
            Field.maybe("what_if_volume_m3", r -> r.change.map(BodyChange::volumeCubicMetres)),
            Field.of("shop_number", r -> r.body.open().instrument().text()),
            Field.of("open_sitting", r -> r.body.open().id().toString()),
            Field.maybe("covered_sitting", r -> r.body.covered().map(s -> s.id().toString())),
            Field.maybe("loaded_sitting", r -> r.body.loaded().map(s -> s.id().toString())),
            Field.maybe(
                    "open_temperature_c", r -> r.body.open().conditions().air().temperatureCelsius()),
            Field.maybe(
                    "open_relative_humidity_percent",
                    r -> r.body.open().conditions().air().relativeHumidityPercent()),
            Field.maybe("loaded_added_mass_g", r -> r.body.loaded().flatMap(BodyModelRow::grams)),
            Field.of(
                    "set_up_spread_frequency_percent",
                    r -> 100 * r.body.spread().frequencyShare()),
            Field.of(
                    "set_up_spread_basis",
                    r -> r.body.spread().frequency().basis().words()));

    /** The table of a body. */
    static String csv(FittedBody body) {
        Stream<BodyModelRow> asItIs = body.model().answers().entrySet().stream()
                .map(e -> new BodyModelRow(
                        body, Optional.empty(), e.getKey().key(), e.getKey().unit(), e.getValue()));
        Stream<BodyModelRow> changed = body.whatIf().stream().flatMap(w -> changed(body, w).stream());
        List<Field<BodyModelRow>> fields =
                Stream.concat(FIGURE.stream(), CIRCUMSTANCES.stream()).toList();
        return CsvText.of(fields, Stream.concat(asItIs, changed).toList());
    }

    private static List<BodyModelRow> changed(FittedBody body, FittedBody.WhatIf whatIf) {
        Optional<BodyChange> change = Optional.of(whatIf.change());
        List<BodyModelRow> rows = new ArrayList<>();
        if (whatIf.prediction() instanceof Prediction.Refused refused) {
            rows.add(new BodyModelRow(body, change, "what_if", "", new Answer.Missing(refused.why())));
        }
        if (whatIf.prediction() instanceof Prediction.Foreseen foreseen) {
            int number = 0;
            for (Prediction.Moved moved : foreseen.resonances()) {
                String which = "what_if_resonance_" + ++number;
                rows.add(new BodyModelRow(body, change, which, "Hz", moved.afterHz()));
                rows.add(new BodyModelRow(body, change, which + "_shift", "Hz", moved.shiftHz()));
            }
        }
        return rows;
    }

    private static Optional<Double> grams(Sitting sitting) {
        return sitting.conditions().addedMass().map(AddedMass::grams);
    }
}
