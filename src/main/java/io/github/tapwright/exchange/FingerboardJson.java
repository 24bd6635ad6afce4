package io.github.tapwright.exchange;

import io.github.tapwright.level.SoundLevels;
import io.github.tapwright.note.run.FastDecay;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.Fingerboard;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A run of notes as JSON and as a CSV table. */
public final class FingerboardJson {

    private static final List<Field<FastDecay>> FAST = List.of(
            Field.of("string", f -> f.place().string()),
            Field.of("fret", f -> f.place().fret()),
            Field.of("early_decay_time_s", FastDecay::decayTimeSeconds),
            Field.of("usual_s", FastDecay::usualSeconds),
            Field.of("deviations", FastDecay::deviations));

    private FingerboardJson() {}

    /**
     * The whole run with every partial.
     *
     * @param files the recordings as given
     * @param board what was found
     * @return an object with "notes", "fast_decays" and "warnings"
     */
    public static String of(List<String> files, Fingerboard board) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("files", files);
        document.put(
                "notes", board.notes().stream().map(n -> note(files, board, n)).toList());
        document.put("fast_decays", JsonText.array(FAST, board.fastDecays()));
        document.put("warnings", board.warnings());
        document.put("open_strings_hz", board.settings().tuning().openHz());
        document.put("order", board.settings().order().name().toLowerCase(Locale.ROOT));
        return JsonText.of(document);
    }

    /**
     * One line for each note.
     *
     * @param files the recordings as given
     * @param board what was found
     * @return the text of a CSV file
     */
    public static String csv(List<String> files, Fingerboard board) {
        return CsvText.of(row(files, board.settings().tuning()), board.notes());
    }

    private static Map<String, @Nullable Object> note(List<String> files, Fingerboard board, Fingerboard.Note note) {
        Map<String, @Nullable Object> document =
                new LinkedHashMap<>(JsonText.object(row(files, board.settings().tuning()), note));
        document.putAll(NoteJson.note(note.result()));
        document.put("warnings", note.result().warnings());
        document.put("method_version", note.result().methodVersion());
        return document;
    }

    private static List<Field<Fingerboard.Note>> row(List<String> files, Tuning tuning) {
        List<Field<Fingerboard.Note>> own = List.of(
                Field.of("file", n -> files.get(n.file())),
                Field.of("found_at_s", Fingerboard.Note::attackSeconds),
                Field.maybe("string", n -> n.place().map(Fret::string)),
                Field.maybe("fret", n -> n.place().map(Fret::fret)),
                Field.maybe("pitch_error_cents", n -> n.pitchErrorCents(tuning)),
                Field.maybe(
                        "lafmax_db_re_full_scale",
                        n -> n.levels().map(SoundLevels::lafMax).map(l -> l.levelDb())),
                Field.maybe(
                        "lae_db_re_full_scale",
                        n -> n.levels().map(SoundLevels::lae).map(l -> l.levelDb())));
        return Stream.concat(own.stream(), Field.within(NoteJson.FIELDS, Fingerboard.Note::result).stream())
                .toList();
    }
}
