package io.github.tapwright.archive;

import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.instrument.Strings;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Microphone;
import io.github.tapwright.sitting.Placing;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/** A sitting's conditions as columns; what is unknown is NULL. */
final class ConditionColumns {

    private ConditionColumns() {}

    static Insert put(Insert row, Conditions conditions) {
        Strings strings = conditions.strings();
        Placing placing = conditions.placing();
        Microphone microphone = conditions.microphone();
        return row.put("stage", conditions.stage().map(Stage::key))
                .put("temperature_celsius", conditions.air().temperatureCelsius())
                .put("relative_humidity_percent", conditions.air().relativeHumidityPercent())
                .put("strings", strings.state().map(StringState::key))
                .put("string_set", strings.setName())
                .put("strings_fitted_on", strings.fittedOn().map(LocalDate::toString))
                .put("hole", holeKey(conditions.hole()))
                .put("support", placing.support())
                .put("strike_tool", placing.strikeTool())
                .put("strike_place", placing.strikePlace())
                .put("microphone", microphone.model())
                .put("microphone_distance_mm", microphone.distanceMm())
                .put("gain", microphone.gain())
                .put("rested_h", conditions.air().restedHours())
                .put("added_mass_g", conditions.addedMass().map(AddedMass::grams))
                .put("added_mass_place", conditions.addedMass().flatMap(AddedMass::place))
                .put("operator", conditions.operator())
                .put("note", conditions.note());
    }

    static Conditions read(Row row) throws SQLException {
        return new Conditions(
                stage(row),
                air(row),
                strings(row),
                hole(row),
                new Placing(
                        row.optionalText("support"), row.optionalText("strike_tool"), row.optionalText("strike_place")),
                new Microphone(
                        row.optionalText("microphone"),
                        row.optionalNumber("microphone_distance_mm"),
                        row.optionalText("gain")),
                addedMass(row),
                row.optionalText("operator"),
                row.optionalText("note"));
    }

    static Strings strings(Row row) throws SQLException {
        return new Strings(
                row.key("strings", StringState::find),
                row.optionalText("string_set"),
                row.optionalText("strings_fitted_on").map(LocalDate::parse));
    }

    static Optional<Stage> stage(Row row) throws SQLException {
        return row.key("stage", Stage::find);
    }

    static Air air(Row row) throws SQLException {
        return new Air(
                row.optionalNumber("temperature_celsius"),
                row.optionalNumber("relative_humidity_percent"),
                row.optionalNumber("rested_h"));
    }

    private static Optional<AddedMass> addedMass(Row row) throws SQLException {
        Optional<String> place = row.optionalText("added_mass_place");
        return row.optionalNumber("added_mass_g").map(grams -> new AddedMass(grams, place));
    }

    static HoleState hole(Row row) throws SQLException {
        return row.key("hole", ConditionColumns::knownHole).orElse(HoleState.UNKNOWN);
    }

    private static Optional<String> holeKey(HoleState hole) {
        return hole == HoleState.UNKNOWN
                ? Optional.empty()
                : Optional.of(hole.name().toLowerCase(Locale.ROOT));
    }

    private static Optional<HoleState> knownHole(String key) {
        return switch (key) {
            case "open" -> Optional.of(HoleState.OPEN);
            case "covered" -> Optional.of(HoleState.COVERED);
            default -> Optional.empty();
        };
    }
}
