package io.github.tapwright.archive;

import io.github.tapwright.note.Disturbance;
import io.github.tapwright.note.NoteName;
import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.NoteSettings;
import io.github.tapwright.note.Partial;
import io.github.tapwright.note.Pitch;
import io.github.tapwright.note.run.FastDecay;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.sitting.Fingerboard;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;

/** Writes the findings of a run of notes into their tables. */
final class NotesWriter {

    private final Connection connection;

    NotesWriter(Connection connection) {
        this.connection = connection;
    }

    void write(long sittingId, int number, Instant madeAt, Fingerboard board) throws SQLException {
        NoteSettings settings = board.settings().notes();
        long id = Insert.into("note_analysis")
                .put("sitting_id", sittingId)
                .put("number", number)
                .put("made_at", madeAt)
                .put("method_version", board.methodVersion())
                .put("playing_order", board.settings().order().name().toLowerCase(Locale.ROOT))
                .put("fret_count", board.settings().tuning().fretCount())
                .put("a4_hz", settings.a4Hz())
                .put("lowest_pitch_hz", settings.lowestPitchHz())
                .put("highest_pitch_hz", settings.highestPitchHz())
                .put("highest_partial_hz", settings.highestPartialHz())
                .put("expected", settings.expected().map(NoteName::toString))
                .run(connection);
        OpenStringColumns.write(
                connection, "note_open_string", id, board.settings().tuning());
        for (int i = 0; i < board.warnings().size(); i++) {
            child("note_analysis_warning", id, i)
                    .put("warning", board.warnings().get(i))
                    .run(connection);
        }
        for (int i = 0; i < board.notes().size(); i++) {
            note(id, i, board.notes().get(i));
        }
        for (int i = 0; i < board.fastDecays().size(); i++) {
            fastDecay(id, i, board.fastDecays().get(i));
        }
    }

    private void note(long analysisId, int ordinal, Fingerboard.Note note) throws SQLException {
        NoteResult result = note.result();
        Insert row = child("note", analysisId, ordinal)
                .put("source", note.file())
                .put("attack_at_s", note.attackSeconds())
                .put("string", note.place().map(Fret::string))
                .put("fret", note.place().map(Fret::fret))
                .put("method_version", result.methodVersion());
        EstimateColumns.put(row, "pitch", "_hz", result.pitch().found().map(Pitch::hz));
        EstimateColumns.put(row, "inharmonicity", "", result.inharmonicity().found());
        row.put("pitch_refusal", result.pitch().refusal())
                .put("inharmonicity_refusal", result.inharmonicity().refusal())
                // These hold with the pitch: its refusal is theirs.
                .put("onset_s", result.onsetSeconds().found())
                .put("attack_s", result.attackSeconds().found())
                .put("spectral_centroid_hz", result.spectralCentroidHz().found())
                .put("series_scatter_cents", result.seriesScatterCents().found())
                .put(
                        "disturbance",
                        result.disturbance().map(d -> d.kind().name().toLowerCase(Locale.ROOT)))
                .put("disturbance_at_s", result.disturbance().map(Disturbance::atSeconds))
                .put("heard_db", result.decay().heardDb())
                .put("channel_used", result.channelUsed())
                .put("duration_s", result.durationSeconds());
        NoteLevelColumns.put(row, note.levels()).run(connection);
        NoteDecayColumns.write(connection, analysisId, ordinal, result.decay());
        warnings(analysisId, ordinal, result.warnings());
        for (Partial partial : result.partials()) {
            PartialColumns.put(part("note_partial", analysisId, ordinal), partial)
                    .run(connection);
        }
    }

    private void warnings(long analysisId, int note, List<String> warnings) throws SQLException {
        for (int i = 0; i < warnings.size(); i++) {
            part("note_warning", analysisId, note)
                    .put("ordinal", i)
                    .put("warning", warnings.get(i))
                    .run(connection);
        }
    }

    private void fastDecay(long analysisId, int ordinal, FastDecay fast) throws SQLException {
        child("fast_decay", analysisId, ordinal)
                .put("string", fast.place().string())
                .put("fret", fast.place().fret())
                .put("decay_time_s", fast.decayTimeSeconds())
                .put("usual_s", fast.usualSeconds())
                .put("deviations", fast.deviations())
                .run(connection);
    }

    private static Insert child(String table, long analysisId, int ordinal) {
        return Insert.into(table).put("analysis_id", analysisId).put("ordinal", ordinal);
    }

    private static Insert part(String table, long analysisId, int note) {
        return Insert.into(table).put("analysis_id", analysisId).put("note", note);
    }
}
