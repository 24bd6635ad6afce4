package io.github.tapwright.exchange;

import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.Partial;
import io.github.tapwright.note.run.Fret;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A partial with the note it belongs to.
 *
 * @param file name of the recording
 * @param noteNumber from 1, as in the table of notes
 * @param place string and fret, if known
 * @param note the note
 * @param partial the partial
 */
record PartialRow(String file, int noteNumber, Optional<Fret> place, NoteResult note, Partial partial) {

    static final List<Field<PartialRow>> FIELDS = Stream.concat(
                    Stream.<Field<PartialRow>>of(
                            Field.of("file", PartialRow::file),
                            Field.of("note_method_version", r -> r.note.methodVersion()),
                            Field.of("note_number", PartialRow::noteNumber),
                            Field.maybe("string", r -> r.place.map(Fret::string)),
                            Field.maybe("fret", r -> r.place.map(Fret::fret)),
                            Field.maybe("pitch_hz", r -> r.note.pitch().found().map(p -> p.hz().value()))),
                    Field.within(NoteJson.PARTIALS, PartialRow::partial).stream())
            .toList();

    static Stream<PartialRow> of(RunNoteRow row) {
        return of(row.file(), row.number(), row.note().place(), row.note().result());
    }

    static Stream<PartialRow> of(String file, int noteNumber, Optional<Fret> place, NoteResult note) {
        return note.partials().stream().map(p -> new PartialRow(file, noteNumber, place, note, p));
    }
}
