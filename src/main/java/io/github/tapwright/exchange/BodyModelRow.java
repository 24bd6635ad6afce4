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
record BodyModelRow(FittedBody body, Optional<BodyChange> change, String quantity, String unit, Figure answer) {

    /** A figure with its 95 % interval, or why there is none. */
    private record Figure(
            Optional<Double> value,
            Optional<Double> u,
            Optional<Double> low95,
            Optional<Double> high95,
            Optional<String> missing,
            Optional<String> contradicted) {

        static Figure of(Answer answer) {
            Optional<Answer.Inferred> found = answer.inferred();
            return new Figure(
                    found.map(Answer.Inferred::value),
                    found.map(Answer.Inferred::standardUncertainty),
                    found.map(i -> i.interval95().lower()),
                    found.map(i -> i.interval95().upper()),
                    answer instanceof Answer.Missing m ? Optional.of(m.need()) : Optional.empty(),
                    answer instanceof Answer.Contradicted c ? Optional.of(c.why()) : Optional.empty());
        }

        static Figure missing(String why) {
            return new Figure(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(why),
                    Optional.empty());
        }
    }

    private static final List<Field<BodyModelRow>> FIELDS = List.of(
            Field.of("quantity", BodyModelRow::quantity),
            Field.of("unit", BodyModelRow::unit),
            Field.maybe("value", r -> r.answer.value),
            Field.maybe("value_u", r -> r.answer.u),
            Field.maybe("low_95", r -> r.answer.low95),
            Field.maybe("high_95", r -> r.answer.high95),
            Field.maybe("missing", r -> r.answer.missing),
            Field.maybe("contradicted", r -> r.answer.contradicted),
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
            Field.of("set_up_spread_basis", r -> r.body.spread().basis().words()));

    /** The table of a body. */
    static String csv(FittedBody body) {
        Stream<BodyModelRow> asItIs = body.model().answers().entrySet().stream()
                .map(e -> new BodyModelRow(
                        body, Optional.empty(), e.getKey().key(), e.getKey().unit(), Figure.of(e.getValue())));
        Stream<BodyModelRow> changed = body.whatIf().stream().flatMap(w -> changed(body, w).stream());
        return CsvText.of(FIELDS, Stream.concat(asItIs, changed).toList());
    }

    private static List<BodyModelRow> changed(FittedBody body, FittedBody.WhatIf whatIf) {
        Optional<BodyChange> change = Optional.of(whatIf.change());
        List<BodyModelRow> rows = new ArrayList<>();
        if (whatIf.prediction() instanceof Prediction.Refused refused) {
            rows.add(new BodyModelRow(body, change, "what_if", "", Figure.missing(refused.why())));
        }
        if (whatIf.prediction() instanceof Prediction.Foreseen foreseen) {
            int number = 0;
            for (Prediction.Moved moved : foreseen.resonances()) {
                String which = "what_if_resonance_" + ++number;
                rows.add(new BodyModelRow(body, change, which, "Hz", Figure.of(moved.afterHz())));
                rows.add(new BodyModelRow(body, change, which + "_shift", "Hz", Figure.of(moved.shiftHz())));
            }
        }
        return rows;
    }

    private static Optional<Double> grams(Sitting sitting) {
        return sitting.conditions().addedMass().map(AddedMass::grams);
    }
}
