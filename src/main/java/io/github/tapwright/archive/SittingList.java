package io.github.tapwright.archive;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.sitting.GivenName;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.sitting.SittingSummary.Line;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Lists sittings in two queries whatever their number, and never touches strikes and curves. */
final class SittingList {

    private static final String SITTINGS = """
            SELECT s.id, i.shop_number, s.taken_at, s.time_known, s.stage, s.temperature_celsius,
                   s.relative_humidity_percent, s.rested_h, s.hole, s.added_mass_g, s.procedure,
                   (SELECT count(*) FROM recording r WHERE r.sitting_id = s.id) AS recordings,
                   (SELECT d.resonances FROM analysis a JOIN tap_digest d ON d.analysis_id = a.id
                    WHERE a.sitting_id = s.id ORDER BY a.number DESC LIMIT 1) AS resonances
            FROM sitting s JOIN instrument i ON i.id = s.instrument_id
            """;

    private SittingList() {}

    static List<SittingSummary> read(Connection connection, Optional<ShopNumber> instrument) throws SQLException {
        Map<Long, List<GivenName>> names = OutlineReader.names(connection);
        Map<Long, OutOfUse> setAside = OutOfUseTable.SITTINGS.all(connection);
        return Query.all(
                connection,
                SITTINGS + (instrument.isPresent() ? "WHERE i.shop_number = ?" : "") + " ORDER BY s.taken_at, s.id",
                row -> summary(row, names, setAside),
                instrument.map(ShopNumber::text).stream().toArray());
    }

    private static SittingSummary summary(Row row, Map<Long, List<GivenName>> names, Map<Long, OutOfUse> setAside)
            throws SQLException {
        long id = row.longInteger("id");
        Optional<byte[]> digest = row.optionalBytes("resonances");
        return new SittingSummary(
                new SittingId(id),
                new ShopNumber(row.text("shop_number")),
                SittingReader.takenAt(row),
                ConditionColumns.stage(row),
                ConditionColumns.air(row),
                ConditionColumns.hole(row),
                row.optionalNumber("added_mass_g").isPresent(),
                row.text("procedure"),
                row.integer("recordings"),
                lines(digest.map(TapDigest::resonances).orElse(List.of()), names.getOrDefault(id, List.of())),
                Optional.ofNullable(setAside.get(id)));
    }

    private static List<Line> lines(List<NamedResonance> found, List<GivenName> given) {
        return SittingOutline.shown(found, given).stream()
                .map(r -> new Line(r.found().resonance().frequencyHz().value(), r.name()))
                .toList();
    }
}
