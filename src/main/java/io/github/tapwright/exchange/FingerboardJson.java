package io.github.tapwright.exchange;

import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.run.FastDecay;
import io.github.tapwright.sitting.Fingerboard;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
        document.putAll(document(files, board));
        return JsonText.of(document);
    }

    static Map<String, @Nullable Object> document(List<String> files, Fingerboard board) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put(
                "notes",
                RunNoteRow.of(files, board).stream().map(FingerboardJson::note).toList());
        document.put("fast_decays", JsonText.array(FAST, board.fastDecays()));
        document.put("warnings", board.warnings());
        document.put("open_strings_hz", board.settings().tuning().openHz());
        document.put("order", board.settings().order().name().toLowerCase(Locale.ROOT));
        document.put("method_version", board.methodVersion());
        return document;
    }

    /**
     * One line for each note.
     *
     * @param files the recordings as given
     * @param board what was found
     * @return the text of a CSV file
     */
    public static String csv(List<String> files, Fingerboard board) {
        return CsvText.of(RunNoteRow.FIELDS, RunNoteRow.of(files, board));
    }

    private static Map<String, @Nullable Object> note(RunNoteRow row) {
        NoteResult result = row.note().result();
        Map<String, @Nullable Object> document = new LinkedHashMap<>(JsonText.object(RunNoteRow.FIELDS, row));
        document.putAll(NoteJson.note(result));
        document.put("warnings", result.warnings());
        document.put("method_version", result.methodVersion());
        return document;
    }
}
