package io.github.tapwright.archive;

import io.github.tapwright.mode.ModeName;
import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.tap.Rejection;
import io.github.tapwright.tap.RejectionReason;
import io.github.tapwright.tap.ResponseCurve;
import io.github.tapwright.tap.SetAside;
import io.github.tapwright.tap.Strike;
import io.github.tapwright.tap.TapSettings;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the findings of taps back from their tables. */
final class TapsReader {

    private final Connection connection;

    TapsReader(Connection connection) {
        this.connection = connection;
    }

    private record Head(long id, int number, Instant madeAt, String methodVersion, TapSettings settings) {}

    private record RejectionOfStrike(int strike, Rejection rejection) {}

    List<Analysis> of(long sittingId) throws SQLException, IOException {
        List<Head> heads = Query.all(
                connection, "SELECT * FROM analysis WHERE sitting_id = ? ORDER BY number", TapsReader::head, sittingId);
        List<Analysis> analyses = new ArrayList<>();
        for (Head head : heads) {
            analyses.add(new Analysis(head.number(), head.madeAt(), new Findings.OfTaps(result(head))));
        }
        return analyses;
    }

    /** One analysis. */
    TapResult result(long analysisId) throws SQLException, IOException {
        return result(Query.one(connection, "SELECT * FROM analysis WHERE id = ?", TapsReader::head, analysisId)
                .orElseThrow());
    }

    private TapResult result(Head head) throws SQLException, IOException {
        return new TapResult(
                strikes(head.id()),
                curve(head.id()),
                Query.children(connection, "resonance", TapsReader::resonance, head.id()),
                Query.children(connection, "analysis_warning", row -> row.text("warning"), head.id()),
                head.settings().withSetAside(setAside(head.id())),
                head.methodVersion());
    }

    private List<SetAside> setAside(long analysisId) throws SQLException {
        return Query.children(
                connection,
                "strike_set_aside",
                row -> new SetAside(row.integer("source"), row.number("onset_s")),
                analysisId);
    }

    private List<Strike> strikes(long analysisId) throws SQLException {
        List<RejectionOfStrike> rejections = Query.children(
                connection,
                "strike_rejection",
                row -> new RejectionOfStrike(row.integer("strike"), rejection(row)),
                analysisId);
        return Query.children(connection, "strike", row -> strike(row, rejections), analysisId);
    }

    private Optional<ResponseCurve> curve(long analysisId) throws SQLException, IOException {
        Optional<byte[]> bytes = Query.one(
                connection,
                "SELECT points FROM response_curve WHERE analysis_id = ?",
                row -> row.bytes("points"),
                analysisId);
        return bytes.isPresent() ? Optional.of(CurveBlob.parse(bytes.get())) : Optional.empty();
    }

    private static Head head(Row row) throws SQLException {
        TapSettings settings = new TapSettings(
                row.number("low_hz"),
                row.number("high_hz"),
                row.number("longest_decay_s"),
                row.number("minimum_snr_db"));
        return new Head(
                row.longInteger("id"),
                row.integer("number"),
                row.instant("made_at"),
                row.text("method_version"),
                settings);
    }

    private static Strike strike(Row row, List<RejectionOfStrike> rejections) throws SQLException {
        int ordinal = row.integer("ordinal");
        return new Strike(
                row.integer("source"),
                row.number("onset_s"),
                row.number("peak_dbfs"),
                row.number("snr_db"),
                rejections.stream()
                        .filter(r -> r.strike() == ordinal)
                        .map(RejectionOfStrike::rejection)
                        .toList());
    }

    private static Rejection rejection(Row row) throws SQLException {
        return new Rejection(row.requiredKey("reason", RejectionReason::find), row.text("figure"));
    }

    private static NamedResonance resonance(Row row) throws SQLException {
        Resonance found = new Resonance(
                EstimateColumns.read(row, "frequency", "_hz"),
                EstimateColumns.read(row, "q", ""),
                EstimateColumns.read(row, "decay_time", "_s"),
                EstimateColumns.read(row, "level", "_db"),
                row.integer("strike_count"),
                row.text("note"));
        return new NamedResonance(found, row.key("suggested_name", ModeName::find), row.text("name_reason"));
    }
}
