package io.github.tapwright.archive;

import io.github.tapwright.mode.ModeName;
import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.tap.Rejection;
import io.github.tapwright.tap.SetAside;
import io.github.tapwright.tap.Strike;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;

/** Writes the findings of taps into their tables. */
final class TapsWriter {

    private final Connection connection;

    TapsWriter(Connection connection) {
        this.connection = connection;
    }

    void write(long sittingId, int number, Instant madeAt, TapResult result) throws SQLException, IOException {
        long id = Insert.into("analysis")
                .put("sitting_id", sittingId)
                .put("number", number)
                .put("made_at", madeAt)
                .put("method_version", result.methodVersion())
                .put("low_hz", result.settings().lowHz())
                .put("high_hz", result.settings().highHz())
                .put("longest_decay_s", result.settings().longestDecaySeconds())
                .put("minimum_snr_db", result.settings().minimumSnrDb())
                .run(connection);
        for (int i = 0; i < result.warnings().size(); i++) {
            child("analysis_warning", id, i)
                    .put("warning", result.warnings().get(i))
                    .run(connection);
        }
        for (int i = 0; i < result.settings().setAside().size(); i++) {
            SetAside unwanted = result.settings().setAside().get(i);
            child("strike_set_aside", id, i)
                    .put("source", unwanted.source())
                    .put("onset_s", unwanted.onsetSeconds())
                    .run(connection);
        }
        for (int i = 0; i < result.strikes().size(); i++) {
            strike(id, i, result.strikes().get(i));
        }
        for (int i = 0; i < result.resonances().size(); i++) {
            resonance(id, i, result.resonances().get(i));
        }
        if (result.curve().isPresent()) {
            Insert.into("response_curve")
                    .put("analysis_id", id)
                    .put("points", CurveBlob.of(result.curve().get()))
                    .run(connection);
        }
        TapDigestTable.write(connection, id, result);
    }

    private void strike(long analysisId, int ordinal, Strike strike) throws SQLException {
        child("strike", analysisId, ordinal)
                .put("source", strike.source())
                .put("onset_s", strike.onsetSeconds())
                .put("peak_dbfs", strike.peakDbfs())
                .put("snr_db", strike.snrDb())
                .run(connection);
        for (int i = 0; i < strike.rejections().size(); i++) {
            Rejection rejection = strike.rejections().get(i);
            child("strike_rejection", analysisId, i)
                    .put("strike", ordinal)
                    .put("reason", rejection.reason().key())
                    .put("figure", rejection.figure())
                    .run(connection);
        }
    }

    private void resonance(long analysisId, int ordinal, NamedResonance named) throws SQLException {
        Resonance found = named.resonance();
        Insert row = child("resonance", analysisId, ordinal);
        EstimateColumns.put(row, "frequency", "_hz", found.frequencyHz());
        EstimateColumns.put(row, "q", "", found.q());
        EstimateColumns.put(row, "decay_time", "_s", found.decayTimeSeconds());
        EstimateColumns.put(row, "level", "_db", found.levelDb());
        row.put("strike_count", found.strikeCount())
                .put("note", found.note())
                .put("suggested_name", named.name().map(ModeName::key))
                .put("name_reason", named.reason())
                .run(connection);
    }

    private static Insert child(String table, long analysisId, int ordinal) {
        return Insert.into(table).put("analysis_id", analysisId).put("ordinal", ordinal);
    }
}
