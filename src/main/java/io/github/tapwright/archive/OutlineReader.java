package io.github.tapwright.archive;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.sitting.GivenName;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.PluckLevels;
import io.github.tapwright.sitting.PluckLevels.OfString;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads sittings' outlines in three queries whatever their number; names the maker gave are read of all sittings even for one. */
final class OutlineReader {

    private static final String LATEST = """
            (SELECT id FROM %1$s WHERE sitting_id = s.id ORDER BY number DESC LIMIT 1)
            """;
    private static final String SITTINGS = """
            SELECT s.*, i.shop_number, d.resonances, d.third_octaves, p.calibration_id,
                   CASE s.procedure WHEN 'taps' THEN a.method_version WHEN 'notes' THEN n.method_version
                       ELSE p.method_version END AS method_version
            FROM sitting s
            JOIN instrument i ON i.id = s.instrument_id
            LEFT JOIN analysis a ON a.id = %s
            LEFT JOIN note_analysis n ON s.procedure = 'notes' AND n.id = %s
            LEFT JOIN pluck_analysis p ON s.procedure = 'plucks' AND p.id = %s
            LEFT JOIN tap_digest d ON d.analysis_id = a.id
            """.formatted(
            LATEST.formatted("analysis"), LATEST.formatted("note_analysis"), LATEST.formatted("pluck_analysis"));
    private static final String PLUCKS = """
            SELECT a.sitting_id, p.string, p.lafmax_db
            FROM sitting s JOIN instrument i ON i.id = s.instrument_id
            JOIN pluck_analysis a ON a.id = %s
            JOIN pluck p ON p.analysis_id = a.id
            """.formatted(LATEST.formatted("pluck_analysis"));
    private static final String OF_PLUCKS =
            " AND s.procedure = 'plucks' AND p.string IS NOT NULL AND p.lafmax_db IS NOT NULL"
                    + " ORDER BY a.sitting_id, p.ordinal";

    private final Connection connection;
    private final Map<Long, List<GivenName>> names;
    private final Map<Long, List<OfString>> plucks;
    private final Map<Long, OutOfUse> setAside;
    private final Map<Long, OutOfUse> withdrawn;

    private OutlineReader(Connection connection, String which, Object... parameters) throws SQLException {
        this.connection = connection;
        this.names = names(connection);
        this.withdrawn = OutOfUseTable.CALIBRATIONS.all(connection);
        this.setAside = OutOfUseTable.SITTINGS.all(connection);
        this.plucks = new HashMap<>();
        Query.all(
                connection,
                PLUCKS + which + OF_PLUCKS,
                row -> plucks.computeIfAbsent(row.longInteger("sitting_id"), id -> new ArrayList<>())
                        .add(new OfString(row.integer("string"), row.number("lafmax_db"))),
                parameters);
    }

    static List<SittingOutline> of(Connection connection, Optional<ShopNumber> instrument) throws SQLException {
        String which = instrument.isPresent() ? "WHERE i.shop_number = ?" : "WHERE TRUE";
        Object[] parameters = instrument.map(ShopNumber::text).stream().toArray();
        OutlineReader reader = new OutlineReader(connection, which, parameters);
        return reader.read(which, parameters);
    }

    static Optional<SittingOutline> of(Connection connection, SittingId id) throws SQLException {
        String which = "WHERE s.id = ?";
        return new OutlineReader(connection, which, id.number())
                .read(which, id.number()).stream().findFirst();
    }

    /** Everything the maker said about names, oldest first, by sitting. */
    static Map<Long, List<GivenName>> names(Connection connection) throws SQLException {
        Map<Long, List<GivenName>> names = new HashMap<>();
        Query.all(
                connection,
                "SELECT * FROM given_name ORDER BY sitting_id, ordinal",
                row -> names.computeIfAbsent(row.longInteger("sitting_id"), id -> new ArrayList<>())
                        .add(SittingReader.name(row)));
        return names;
    }

    private List<SittingOutline> read(String which, Object... parameters) throws SQLException {
        return Query.all(connection, SITTINGS + which + " ORDER BY s.taken_at, s.id", this::outline, parameters);
    }

    private SittingOutline outline(Row row) throws SQLException {
        long id = row.longInteger("id");
        String procedure = row.text("procedure");
        Optional<byte[]> octaves = row.optionalBytes("third_octaves");
        return new SittingOutline(
                new SittingId(id),
                new ShopNumber(row.text("shop_number")),
                SittingReader.takenAt(row),
                ConditionColumns.read(row),
                procedure,
                row.optionalText("method_version").orElseThrow(() -> SittingReader.half(new SittingId(id))),
                procedure.equals(Procedure.BodyTaps.KEY)
                        ? resonances(row, names.getOrDefault(id, List.of()))
                        : List.of(),
                octaves.map(TapDigest::thirdOctaves),
                procedure.equals(Procedure.OpenPlucks.KEY)
                        ? Optional.of(new PluckLevels(
                                plucks.getOrDefault(id, List.of()),
                                row.optionalInteger("calibration_id").isPresent(),
                                row.optionalInteger("calibration_id")
                                        .flatMap(c -> Optional.ofNullable(withdrawn.get(c.longValue())))))
                        : Optional.<PluckLevels>empty(),
                Optional.ofNullable(setAside.get(id)));
    }

    private static List<ShownResonance> resonances(Row row, List<GivenName> given) throws SQLException {
        List<NamedResonance> found = TapDigest.resonances(row.bytes("resonances"));
        return SittingOutline.shown(found, given);
    }
}
