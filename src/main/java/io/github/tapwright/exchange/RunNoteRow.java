package io.github.tapwright.exchange;

import io.github.tapwright.level.SoundLevels;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.ShownResonance;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A note of a run with the name of the file it was found in.
 *
 * @param file name of the recording
 * @param number from 1 in the order played
 * @param tuning of the run
 * @param note the note
 * @param dead what is known of its dying away fast, empty if it does not
 */
record RunNoteRow(String file, int number, Tuning tuning, Fingerboard.Note note, Optional<DeadNoteRow> dead) {

    static final List<Field<RunNoteRow>> FIELDS = Stream.concat(
                    Stream.<Field<RunNoteRow>>of(
                            Field.of("file", RunNoteRow::file),
                            Field.of("note_method_version", r -> r.note.result().methodVersion()),
                            Field.of("number", RunNoteRow::number),
                            Field.of("found_at_s", r -> r.note.attackSeconds()),
                            Field.maybe("string", r -> r.note.place().map(Fret::string)),
                            Field.maybe("fret", r -> r.note.place().map(Fret::fret)),
                            Field.maybe(
                                    "pitch_error_cents",
                                    r -> r.note.pitchErrorCents(r.tuning).found()),
                            Field.maybe("no_place_because", r -> r.note.whyNoPlace()),
                            Field.maybe(
                                    "lafmax_db_re_full_scale",
                                    r -> r.note.levels()
                                            .map(SoundLevels::lafMax)
                                            .map(l -> l.levelDb())),
                            Field.maybe(
                                    "lae_db_re_full_scale",
                                    r -> r.note.levels().map(SoundLevels::lae).map(l -> l.levelDb())),
                            Field.of("dies_away_fast", r -> r.dead.isPresent()),
                            Field.maybe("near_resonance_name", r -> r.dead.flatMap(DeadNoteRow::name)),
                            Field.maybe("near_resonance_hz", r -> r.dead.flatMap(DeadNoteRow::hz))),
                    Field.within(NoteJson.FIELDS, (RunNoteRow r) -> r.note.result()).stream())
            .toList();

    static List<RunNoteRow> of(List<String> files, Fingerboard board) {
        return of(files, board, List.of());
    }

    static List<RunNoteRow> of(List<String> files, Fingerboard board, List<ShownResonance> resonances) {
        List<Fingerboard.Note> notes = board.notes();
        List<DeadNoteRow> dead = DeadNoteRow.of(board, resonances);
        return IntStream.range(0, notes.size())
                .mapToObj(i -> new RunNoteRow(
                        files.get(notes.get(i).file()),
                        i + 1,
                        board.settings().tuning(),
                        notes.get(i),
                        dead.stream()
                                .filter(d -> notes.get(i)
                                        .place()
                                        .equals(Optional.of(d.note().place())))
                                .findFirst()))
                .toList();
    }
}
