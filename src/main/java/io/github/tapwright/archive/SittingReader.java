package io.github.tapwright.archive;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.GivenName;
import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a whole sitting back from its tables. */
final class SittingReader {

    private static final String SITTING =
            "SELECT s.*, i.shop_number FROM sitting s JOIN instrument i ON i.id = s.instrument_id WHERE s.id = ?";
    private static final String RECORDINGS =
            "SELECT r.*, o.size_bytes, o.extension FROM recording r JOIN original o ON o.sha256 = r.sha256"
                    + " WHERE r.sitting_id = ? ORDER BY r.place";

    private final Connection connection;

    SittingReader(Connection connection) {
        this.connection = connection;
    }

    private record NoticeOfRecording(int place, String notice) {}

    Optional<Sitting> find(SittingId id) throws SQLException, IOException {
        List<KeptRecording> recordings = recordings(id);
        Optional<String> procedure = procedure(connection, id);
        List<Analysis> analyses =
                procedure.isEmpty() ? List.of() : new AnalysisReader(connection).of(id.number(), procedure.get());
        List<GivenName> names = Query.all(
                connection,
                "SELECT * FROM given_name WHERE sitting_id = ? ORDER BY ordinal",
                SittingReader::name,
                id.number());
        Optional<OutOfUse> setAside =
                Optional.ofNullable(OutOfUseTable.SITTINGS.all(connection).get(id.number()));
        return Query.one(
                connection, SITTING, row -> sitting(id, row, recordings, analyses, names, setAside), id.number());
    }

    /** Empty if there is no such sitting. */
    static Optional<String> procedure(Connection connection, SittingId id) throws SQLException {
        return Query.one(
                connection, "SELECT procedure FROM sitting WHERE id = ?", row -> row.text("procedure"), id.number());
    }

    private List<KeptRecording> recordings(SittingId id) throws SQLException {
        List<NoticeOfRecording> notices = Query.all(
                connection,
                "SELECT * FROM recording_notice WHERE sitting_id = ? ORDER BY place, ordinal",
                row -> new NoticeOfRecording(row.integer("place"), row.text("notice")),
                id.number());
        return Query.all(connection, RECORDINGS, row -> recording(row, notices), id.number());
    }

    private static KeptRecording recording(Row row, List<NoticeOfRecording> notices) throws SQLException {
        int place = row.integer("place");
        List<String> ofThis = notices.stream()
                .filter(n -> n.place() == place)
                .map(NoticeOfRecording::notice)
                .toList();
        return SoundColumns.read(row, ofThis);
    }

    static GivenName name(Row row) throws SQLException {
        return new GivenName(row.number("frequency_hz"), row.optionalText("name"), row.instant("given_at"));
    }

    static Moment takenAt(Row row) throws SQLException {
        return new Moment(row.instant("taken_at"), row.integer("time_known") == 1);
    }

    private static Sitting sitting(
            SittingId id,
            Row row,
            List<KeptRecording> recordings,
            List<Analysis> analyses,
            List<GivenName> names,
            Optional<OutOfUse> setAside)
            throws SQLException {
        if (recordings.isEmpty() || analyses.isEmpty()) {
            throw half(id);
        }
        return new Sitting(
                id,
                new ShopNumber(row.text("shop_number")),
                takenAt(row),
                row.instant("added_at"),
                ConditionColumns.read(row),
                recordings,
                new ArrayList<>(analyses),
                names,
                setAside);
    }

    static ArchiveException half(SittingId id) {
        return new ArchiveException("sitting " + id + " lacks its recordings or its results; run verify, and"
                + " restore the latest backup into a new folder");
    }
}
