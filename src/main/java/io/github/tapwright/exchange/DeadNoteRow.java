package io.github.tapwright.exchange;

import io.github.tapwright.note.run.FastDecay;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.NearResonance;
import io.github.tapwright.sitting.ShownResonance;
import java.util.List;
import java.util.Optional;

/**
 * A note that dies away fast, with the resonance it may be owed to.
 *
 * @param note the note
 * @param near the resonance, empty if none is near or no taps were given
 */
record DeadNoteRow(FastDecay note, Optional<NearResonance> near) {

    static final List<Field<DeadNoteRow>> FIELDS = List.of(
            Field.of("string", d -> d.note.place().string()),
            Field.of("fret", d -> d.note.place().fret()),
            Field.of("early_decay_time_s", d -> d.note.decayTimeSeconds()),
            Field.of("usual_s", d -> d.note.usualSeconds()),
            Field.of("deviations", d -> d.note.deviations()),
            Field.maybe("near_resonance_name", DeadNoteRow::name),
            Field.maybe("near_resonance_hz", DeadNoteRow::hz),
            Field.maybe(
                    "near_resonance_u_hz", d -> d.near.map(r -> r.frequencyHz().standardUncertainty())));

    static List<DeadNoteRow> of(Fingerboard board, List<ShownResonance> resonances) {
        return board.fastDecays().stream()
                .map(f ->
                        new DeadNoteRow(f, NearResonance.of(f, board.settings().tuning(), resonances)))
                .toList();
    }

    Optional<String> name() {
        return near.flatMap(NearResonance::name);
    }

    Optional<Double> hz() {
        return near.map(r -> r.frequencyHz().value());
    }
}
