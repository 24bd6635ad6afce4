package io.github.tapwright.exchange;

import io.github.tapwright.mode.ModeName;
import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.statistics.Estimate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A resonance under the name that holds for it.
 *
 * @param resonance the numbers
 * @param name the name, empty if there is none
 * @param key the neutral key of the name, empty if the name is not one of the known modes
 * @param reason why this name, or why none
 */
record ResonanceRow(Resonance resonance, Optional<String> name, Optional<String> key, String reason) {

    /** What 0 dB of the levels is. */
    static final String LEVEL_REFERENCE = "strongest resonance found, listed or not";

    static final List<Field<ResonanceRow>> FIELDS = Stream.of(
                    estimate("frequency", "_hz", Resonance::frequencyHz),
                    estimate("q", "", Resonance::q),
                    estimate("decay_time", "_s", Resonance::decayTimeSeconds),
                    estimate("level", "_db", Resonance::levelDb),
                    List.<Field<ResonanceRow>>of(
                            Field.of("strikes_used", r -> r.resonance.strikeCount()),
                            Field.maybe("name", r -> r.name),
                            Field.maybe("key", r -> r.key),
                            Field.of("name_reason", ResonanceRow::reason),
                            Field.of("note", r -> r.resonance.note())))
            .flatMap(List::stream)
            .toList();

    /** A table has no place beside its rows, so each says what its level is held against. */
    static final List<Field<ResonanceRow>> TABLE = Stream.concat(
                    FIELDS.stream(), Stream.of(Field.<ResonanceRow>of("level_reference", r -> LEVEL_REFERENCE)))
            .toList();

    static ResonanceRow of(NamedResonance found) {
        return new ResonanceRow(
                found.resonance(),
                found.name().map(ModeName::words),
                found.name().map(ModeName::key),
                found.reason());
    }

    static ResonanceRow of(ShownResonance shown) {
        return new ResonanceRow(
                shown.found().resonance(), shown.name(), shown.mode().map(ModeName::key), shown.reason());
    }

    static List<ResonanceRow> of(Sitting sitting, Analysis analysis) {
        return sitting.resonances(analysis).stream().map(ResonanceRow::of).toList();
    }

    /** Value, standard uncertainty, and half the width of the 95 % interval. */
    private static List<Field<ResonanceRow>> estimate(String what, String unit, Function<Resonance, Estimate> of) {
        return List.of(
                Field.of(what + unit, r -> of.apply(r.resonance).value()),
                Field.of(what + "_u" + unit, r -> of.apply(r.resonance).standardUncertainty()),
                Field.of(
                        what + "_half_width_95" + unit,
                        r -> of.apply(r.resonance).halfWidth95()));
    }
}
