package io.github.tapwright.exchange;

import io.github.tapwright.note.NoteResult;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.ShownResonance;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A run of notes as JSON and as a CSV table. */
public final class FingerboardJson {

    private final List<String> files;
    private final Fingerboard board;
    private final List<ShownResonance> resonances;

    /**
     * Gathers what is to be written.
     *
     * @param files the recordings as given
     * @param board what was found
     * @param resonances of a sitting of taps on the same instrument; none if there was none
     */
    public FingerboardJson(List<String> files, Fingerboard board, List<ShownResonance> resonances) {
        this.files = List.copyOf(files);
        this.board = board;
        this.resonances = List.copyOf(resonances);
    }

    /**
     * The whole run with every partial.
     *
     * @return an object with "notes", "fast_decays" and "warnings"
     */
    public String document() {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("files", files);
        document.putAll(findings());
        return JsonText.of(document);
    }

    /** What was found, without the names of the files. */
    Map<String, @Nullable Object> findings() {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put(
                "notes",
                RunNoteRow.of(files, board, resonances).stream()
                        .map(FingerboardJson::note)
                        .toList());
        document.put("fast_decays", JsonText.array(DeadNoteRow.FIELDS, DeadNoteRow.of(board, resonances)));
        document.put("judged_places", board.judged());
        document.put("warnings", board.warnings());
        document.put("open_strings_hz", board.settings().tuning().openHz());
        document.put("order", board.settings().order().name().toLowerCase(Locale.ROOT));
        document.put("fret_count", board.settings().tuning().fretCount());
        document.put(
                "settings", JsonText.object(NoteJson.SETTINGS, board.settings().notes()));
        document.put("method_version", board.methodVersion());
        return document;
    }

    /**
     * One line for each note.
     *
     * @return the text of a CSV file
     */
    public String csv() {
        return CsvText.of(RunNoteRow.FIELDS, RunNoteRow.of(files, board, resonances));
    }

    private static Map<String, @Nullable Object> note(RunNoteRow row) {
        NoteResult result = row.note().result();
        Map<String, @Nullable Object> document = new LinkedHashMap<>(JsonText.object(RunNoteRow.FIELDS, row));
        document.putAll(NoteJson.note(result));
        document.put(
                "warnings",
                Stream.concat(NoteJson.refusals(result), result.warnings().stream())
                        .toList());
        document.put("method_version", result.methodVersion());
        return document;
    }
}
