package io.github.tapwright.exchange;

import io.github.tapwright.level.SoundLevels;
import io.github.tapwright.note.run.FastDecay;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.NearResonance;
import io.github.tapwright.sitting.ShownResonance;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A run of notes as JSON and as a CSV table. */
public final class FingerboardJson {

    /** A dead note with the resonance it may be owed to. */
    private record Dead(FastDecay note, Optional<NearResonance> near) {}

    private static final List<Field<Dead>> DEAD = List.of(
            Field.of("string", d -> d.note.place().string()),
            Field.of("fret", d -> d.note.place().fret()),
            Field.of("early_decay_time_s", d -> d.note.decayTimeSeconds()),
            Field.of("usual_s", d -> d.note.usualSeconds()),
            Field.of("deviations", d -> d.note.deviations()),
            Field.maybe("near_resonance_name", d -> d.near.flatMap(NearResonance::name)),
            Field.maybe(
                    "near_resonance_hz", d -> d.near.map(r -> r.frequencyHz().value())),
            Field.maybe(
                    "near_resonance_u_hz", d -> d.near.map(r -> r.frequencyHz().standardUncertainty())));

    private final List<String> files;
    private final Fingerboard board;
    private final List<Dead> dead;

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
        this.dead = board.fastDecays().stream()
                .map(f -> new Dead(f, NearResonance.of(f, board.settings().tuning(), resonances)))
                .toList();
    }

    /**
     * The whole run with every partial.
     *
     * @return an object with "notes", "fast_decays" and "warnings"
     */
    public String document() {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("files", files);
        document.put("notes", board.notes().stream().map(this::note).toList());
        document.put("fast_decays", JsonText.array(DEAD, dead));
        document.put("judged_places", board.judged());
        document.put("warnings", board.warnings());
        document.put("open_strings_hz", board.settings().tuning().openHz());
        document.put("order", board.settings().order().name().toLowerCase(Locale.ROOT));
        return JsonText.of(document);
    }

    /**
     * One line for each note.
     *
     * @return the text of a CSV file
     */
    public String csv() {
        return CsvText.of(row(), board.notes());
    }

    private Map<String, @Nullable Object> note(Fingerboard.Note note) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>(JsonText.object(row(), note));
        document.putAll(NoteJson.note(note.result()));
        document.put(
                "warnings",
                Stream.concat(NoteJson.refusals(note.result()), note.result().warnings().stream())
                        .toList());
        document.put("method_version", note.result().methodVersion());
        return document;
    }

    private Optional<Dead> dead(Fingerboard.Note note) {
        return dead.stream()
                .filter(d -> note.place().equals(Optional.of(d.note.place())))
                .findFirst();
    }

    private List<Field<Fingerboard.Note>> row() {
        List<Field<Fingerboard.Note>> own = List.of(
                Field.of("file", n -> files.get(n.file())),
                Field.of("found_at_s", Fingerboard.Note::attackSeconds),
                Field.maybe("string", n -> n.place().map(Fret::string)),
                Field.maybe("fret", n -> n.place().map(Fret::fret)),
                Field.maybe(
                        "pitch_error_cents",
                        n -> n.pitchErrorCents(board.settings().tuning()).found()),
                Field.maybe("no_place_because", Fingerboard.Note::whyNoPlace),
                Field.maybe(
                        "lafmax_db_re_full_scale",
                        n -> n.levels().map(SoundLevels::lafMax).map(l -> l.levelDb())),
                Field.maybe(
                        "lae_db_re_full_scale",
                        n -> n.levels().map(SoundLevels::lae).map(l -> l.levelDb())),
                Field.of("dies_away_fast", n -> dead(n).isPresent()),
                Field.maybe(
                        "near_resonance_name", n -> dead(n).flatMap(Dead::near).flatMap(NearResonance::name)),
                Field.maybe(
                        "near_resonance_hz",
                        n -> dead(n).flatMap(Dead::near)
                                .map(r -> r.frequencyHz().value())));
        return Stream.concat(own.stream(), Field.within(NoteJson.FIELDS, Fingerboard.Note::result).stream())
                .toList();
    }
}
