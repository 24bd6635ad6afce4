package io.github.tapwright.archive;

import io.github.tapwright.note.Disturbance;
import io.github.tapwright.note.Finding;
import io.github.tapwright.note.NoteName;
import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.NoteSettings;
import io.github.tapwright.note.Partial;
import io.github.tapwright.note.Pitch;
import io.github.tapwright.note.run.FastDecay;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.note.run.PlayingOrder;
import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.statistics.Estimate;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the findings of a run of notes back from their tables. */
final class NotesReader {

    private final Connection connection;

    NotesReader(Connection connection) {
        this.connection = connection;
    }

    private record Head(
            long id,
            int number,
            Instant madeAt,
            String methodVersion,
            int fretCount,
            PlayingOrder order,
            NoteSettings notes) {}

    /** What belongs to the notes of an analysis, by the note's ordinal. */
    private record Parts(
            Map<Integer, List<Partial>> partials,
            Map<Integer, List<NoteDecayColumns.Line>> decays,
            Map<Integer, List<String>> warnings) {}

    List<Analysis> of(long sittingId) throws SQLException {
        List<Head> heads = Query.all(
                connection,
                "SELECT * FROM note_analysis WHERE sitting_id = ? ORDER BY number",
                NotesReader::head,
                sittingId);
        List<Analysis> analyses = new ArrayList<>();
        for (Head head : heads) {
            analyses.add(new Analysis(head.number(), head.madeAt(), new Findings.OfNotes(board(head))));
        }
        return analyses;
    }

    private Fingerboard board(Head head) throws SQLException {
        Parts parts = new Parts(
                Query.grouped(connection, "note_partial", "note", PartialColumns::read, head.id()),
                Query.grouped(connection, "note_decay", "note", NoteDecayColumns::read, head.id()),
                Query.grouped(connection, "note_warning", "note", row -> row.text("warning"), head.id()));
        return new Fingerboard(
                Query.children(connection, "note", row -> note(row, head.notes(), parts), head.id()),
                Query.children(connection, "fast_decay", NotesReader::fastDecay, head.id()),
                Query.children(connection, "note_analysis_warning", row -> row.text("warning"), head.id()),
                new Fingerboard.Settings(
                        OpenStringColumns.read(connection, "note_open_string", head.id(), head.fretCount()),
                        head.order(),
                        head.notes()),
                head.methodVersion());
    }

    private static Head head(Row row) throws SQLException {
        NoteSettings notes = new NoteSettings(
                row.number("a4_hz"),
                row.number("lowest_pitch_hz"),
                row.number("highest_pitch_hz"),
                row.number("highest_partial_hz"),
                row.key("expected", NoteName::read));
        return new Head(
                row.longInteger("id"),
                row.integer("number"),
                row.instant("made_at"),
                row.text("method_version"),
                row.integer("fret_count"),
                row.requiredKey("playing_order", key -> named(PlayingOrder.values(), key)),
                notes);
    }

    private static Fingerboard.Note note(Row row, NoteSettings settings, Parts parts) throws SQLException {
        int ordinal = row.integer("ordinal");
        Finding<Pitch> pitch = finding(EstimateColumns.optional(row, "pitch", "_hz"), row.optionalText("pitch_refusal"))
                .map(hz -> Pitch.of(hz, settings.a4Hz()));
        NoteResult result = new NoteResult(
                pitch,
                finding(EstimateColumns.optional(row, "inharmonicity", ""), row.optionalText("inharmonicity_refusal")),
                parts.partials().getOrDefault(ordinal, List.of()),
                NoteDecayColumns.join(parts.decays().getOrDefault(ordinal, List.of()), row.number("heard_db")),
                withPitch(pitch, row, "onset_s"),
                withPitch(pitch, row, "attack_s"),
                withPitch(pitch, row, "spectral_centroid_hz"),
                withPitch(pitch, row, "series_scatter_cents"),
                disturbance(row),
                row.integer("channel_used"),
                row.number("duration_s"),
                parts.warnings().getOrDefault(ordinal, List.of()),
                settings,
                row.text("method_version"));
        return new Fingerboard.Note(
                row.integer("source"), row.number("attack_at_s"), result, NoteLevelColumns.read(row), place(row));
    }

    /** A figure that holds with the pitch; without one, the pitch's refusal is its own. */
    private static Finding<Double> withPitch(Finding<Pitch> pitch, Row row, String column) throws SQLException {
        Optional<String> refusal = pitch.refusal();
        return refusal.isPresent() ? new Finding.NotFound<>(refusal.get()) : new Finding.Found<>(row.number(column));
    }

    private static Finding<Estimate> finding(Optional<Estimate> value, Optional<String> refusal) {
        return value.<Finding<Estimate>>map(Finding.Found::new)
                .orElseGet(() -> new Finding.NotFound<>(refusal.orElseThrow(() -> new ArchiveException(
                        "the archive lacks a figure of a note and the reason for it; run verify, and restore a backup"
                                + " into a new folder"))));
    }

    private static Optional<Disturbance> disturbance(Row row) throws SQLException {
        Optional<Disturbance.Kind> kind = row.key("disturbance", key -> named(Disturbance.Kind.values(), key));
        return kind.isEmpty()
                ? Optional.empty()
                : Optional.of(new Disturbance(kind.get(), row.number("disturbance_at_s")));
    }

    private static Optional<Fret> place(Row row) throws SQLException {
        return row.optionalInteger("string").isEmpty()
                ? Optional.empty()
                : Optional.of(new Fret(row.integer("string"), row.integer("fret")));
    }

    private static FastDecay fastDecay(Row row) throws SQLException {
        return new FastDecay(
                new Fret(row.integer("string"), row.integer("fret")),
                row.number("decay_time_s"),
                row.number("usual_s"),
                row.number("deviations"));
    }

    private static <E extends Enum<E>> Optional<E> named(E[] values, String key) {
        return Arrays.stream(values).filter(v -> v.name().equalsIgnoreCase(key)).findFirst();
    }
}
