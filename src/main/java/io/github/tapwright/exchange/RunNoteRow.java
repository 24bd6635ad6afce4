package io.github.tapwright.exchange;

import io.github.tapwright.level.SoundLevels;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.Fingerboard;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A note of a run with the name of the file it was found in.
 *
 * @param file name of the recording
 * @param number from 1 in the order played
 * @param tuning of the run
 * @param note the note
 */
record RunNoteRow(String file, int number, Tuning tuning, Fingerboard.Note note) {

    static final List<Field<RunNoteRow>> FIELDS = Stream.concat(
                    Stream.<Field<RunNoteRow>>of(
                            Field.of("file", RunNoteRow::file),
                            Field.of("number", RunNoteRow::number),
                            Field.of("found_at_s", r -> r.note.attackSeconds()),
                            Field.maybe("string", r -> r.note.place().map(Fret::string)),
                            Field.maybe("fret", r -> r.note.place().map(Fret::fret)),
                            Field.maybe("pitch_error_cents", r -> r.note.pitchErrorCents(r.tuning)),
                            Field.maybe(
                                    "lafmax_db_re_full_scale",
                                    r -> r.note.levels()
                                            .map(SoundLevels::lafMax)
                                            .map(l -> l.levelDb())),
                            Field.maybe(
                                    "lae_db_re_full_scale",
                                    r -> r.note.levels().map(SoundLevels::lae).map(l -> l.levelDb()))),
                    Field.within(NoteJson.FIELDS, (RunNoteRow r) -> r.note.result()).stream())
            .toList();

    static List<RunNoteRow> of(List<String> files, Fingerboard board) {
        List<Fingerboard.Note> notes = board.notes();
        return IntStream.range(0, notes.size())
                .mapToObj(i -> new RunNoteRow(
                        files.get(notes.get(i).file()), i + 1, board.settings().tuning(), notes.get(i)))
                .toList();
    }
}
