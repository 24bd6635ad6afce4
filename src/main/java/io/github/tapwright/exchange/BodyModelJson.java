package io.github.tapwright.exchange;

import io.github.tapwright.comparison.body.FittedBody;
import io.github.tapwright.comparison.body.ScaleNote;
import io.github.tapwright.mode.body.Answer;
import io.github.tapwright.mode.body.BodyChange;
import io.github.tapwright.mode.body.BodyQuantity;
import io.github.tapwright.mode.body.Prediction;
import io.github.tapwright.sitting.Sitting;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A fitted body as JSON and as a CSV table. */
public final class BodyModelJson {

    /** A figure with its 95 % interval, or why there is none. */
    static final List<Field<Answer>> ANSWER = List.of(
            Field.maybe("value", a -> a.inferred().map(Answer.Inferred::value)),
            Field.maybe("value_u", a -> a.inferred().map(Answer.Inferred::standardUncertainty)),
            Field.maybe("low_95", a -> a.inferred().map(i -> i.interval95().lower())),
            Field.maybe("high_95", a -> a.inferred().map(i -> i.interval95().upper())),
            Field.maybe("missing", a -> a instanceof Answer.Missing m ? Optional.of(m.need()) : Optional.empty()),
            Field.maybe(
                    "contradicted", a -> a instanceof Answer.Contradicted c ? Optional.of(c.why()) : Optional.empty()));

    private static final List<Field<Row>> FIELDS = Stream.concat(
                    Stream.of(
                            Field.<Row>of("quantity", r -> r.quantity.key()),
                            Field.<Row>of("unit", r -> r.quantity.unit())),
                    Field.within(ANSWER, Row::answer).stream())
            .toList();

    private static final List<Field<Prediction.Moved>> MOVED = List.of(
            Field.of("before_hz", Prediction.Moved::beforeHz),
            Field.of("after_hz", m -> m.afterHz().value()),
            Field.of("after_u_hz", m -> m.afterHz().standardUncertainty()),
            Field.of("after_low_95_hz", m -> m.afterHz().interval95().lower()),
            Field.of("after_high_95_hz", m -> m.afterHz().interval95().upper()),
            Field.of("shift_hz", m -> m.shiftHz().value()),
            Field.of("shift_u_hz", m -> m.shiftHz().standardUncertainty()),
            Field.of("nearest_note", m -> ScaleNote.of(m.afterHz()).note().toString()),
            Field.of("cents", m -> ScaleNote.of(m.afterHz()).cents()),
            Field.of("place", m -> ScaleNote.of(m.afterHz()).place().words()));

    private static final List<Field<BodyChange>> CHANGE = List.of(
            Field.of("mass_kg", BodyChange::massKilograms),
            Field.of("stiffness_share", BodyChange::stiffnessShare),
            Field.of("hole_radius_m", BodyChange::holeRadiusMetres),
            Field.of("volume_m3", BodyChange::volumeCubicMetres));

    private BodyModelJson() {}

    private record Row(BodyQuantity quantity, Answer answer) {}

    /**
     * A fitted body.
     *
     * @param body what was found
     * @return an object; what is not known has a null value and says why
     */
    public static String of(FittedBody body) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("shop_number", body.open().instrument().text());
        document.put("open_sitting", body.open().id().toString());
        document.put("covered_sitting", id(body.covered()));
        document.put("loaded_sitting", id(body.loaded()));
        document.put("live_back", body.model().readings().liveBack());
        document.put("set_up_spread", JsonText.object(ComparisonJson.SPREAD, body.spread()));
        document.put("remarks", body.remarks());
        document.put("quantities", JsonText.array(FIELDS, rows(body)));
        document.put("naive_mass_kg", body.model().naiveMassKilograms().orElse(null));
        document.put("what_if", body.whatIf().map(BodyModelJson::whatIf).orElse(null));
        return JsonText.of(document);
    }

    /**
     * One line for each quantity, and one for each figure of what a change would do; each with the sittings and the spread behind it.
     *
     * @param body what was found
     * @return the text of a CSV file
     */
    public static String csv(FittedBody body) {
        return BodyModelRow.csv(body);
    }

    private static List<Row> rows(FittedBody body) {
        return body.model().answers().entrySet().stream()
                .map(e -> new Row(e.getKey(), e.getValue()))
                .toList();
    }

    private static Map<String, @Nullable Object> whatIf(FittedBody.WhatIf whatIf) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("change", JsonText.object(CHANGE, whatIf.change()));
        document.put("refused", whatIf.prediction() instanceof Prediction.Refused r ? r.why() : null);
        document.put(
                "resonances",
                whatIf.prediction() instanceof Prediction.Foreseen f ? JsonText.array(MOVED, f.resonances()) : null);
        return document;
    }

    private static @Nullable String id(Optional<Sitting> sitting) {
        return sitting.map(s -> s.id().toString()).orElse(null);
    }
}
