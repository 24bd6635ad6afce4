package io.github.tapwright.exchange;

import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.WrittenDown;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The tables of sittings and of their recordings. */
final class SittingFields {

    private static final List<Field<Conditions>> CONDITIONS = List.of(
            Field.maybe("stage", c -> c.stage().map(Stage::key)),
            Field.maybe("temperature_c", c -> c.air().temperatureCelsius()),
            Field.maybe("relative_humidity_percent", c -> c.air().relativeHumidityPercent()),
            Field.maybe("strings", c -> c.strings().state().map(StringState::key)),
            Field.maybe("string_set", c -> c.strings().setName()),
            Field.maybe("strings_fitted_on", c -> c.strings().fittedOn().map(Object::toString)),
            Field.maybe("soundhole", SittingFields::hole),
            Field.maybe("support", c -> c.placing().support()),
            Field.maybe("strike_tool", c -> c.placing().strikeTool()),
            Field.maybe("strike_place", c -> c.placing().strikePlace()),
            Field.maybe("microphone", c -> c.microphone().model()),
            Field.maybe("microphone_distance_mm", c -> c.microphone().distanceMm()),
            Field.maybe("gain", c -> c.microphone().gain()),
            Field.maybe("rested_h", c -> c.air().restedHours()),
            Field.maybe("added_mass_g", c -> c.addedMass().map(AddedMass::grams)),
            Field.maybe("added_mass_place", c -> c.addedMass().flatMap(AddedMass::place)),
            Field.maybe("operator", Conditions::operator),
            Field.maybe("note", Conditions::note),
            Field.of("unknown", Conditions::unknown));

    static final List<Field<Sitting>> ALL = Stream.of(
                    List.<Field<Sitting>>of(
                            Field.of("sitting", s -> s.id().toString()),
                            Field.of("shop_number", s -> s.instrument().text()),
                            Field.of("taken_at", s -> s.takenAt().instant().toString()),
                            Field.of("taken_at_time_known", s -> s.takenAt().timeKnown()),
                            Field.of(
                                    "procedure",
                                    s -> s.latest().findings().procedure().key()),
                            Field.of("added_at", s -> s.addedAt().toString())),
                    Field.within(CONDITIONS, Sitting::conditions),
                    OutOfUseFields.of("set_aside", Sitting::setAside))
            .flatMap(List::stream)
            .toList();

    static final List<Field<WrittenDown>> BEFORE_CORRECTIONS = Stream.of(
                    List.<Field<WrittenDown>>of(
                            Field.of("shop_number", w -> w.instrument().text()),
                            Field.of("taken_at", w -> w.takenAt().instant().toString()),
                            Field.of("taken_at_time_known", w -> w.takenAt().timeKnown())),
                    Field.within(CONDITIONS, WrittenDown::conditions))
            .flatMap(List::stream)
            .toList();

    static final List<Field<KeptRecording>> RECORDINGS = Stream.of(
                    Field.within(TapFile.FIELDS, (KeptRecording r) -> new TapFile(r.fileName(), r.facts())),
                    List.<Field<KeptRecording>>of(
                            Field.of("sha256", r -> r.original().sha256()),
                            Field.of("size_bytes", r -> r.original().sizeBytes()),
                            Field.of("notices", r -> r.facts().notices())))
            .flatMap(List::stream)
            .toList();

    private SittingFields() {}

    private static Optional<String> hole(Conditions conditions) {
        return Optional.of(conditions.hole())
                .filter(h -> h != HoleState.UNKNOWN)
                .map(h -> h.name().toLowerCase(Locale.ROOT));
    }
}
