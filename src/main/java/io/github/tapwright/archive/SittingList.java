package io.github.tapwright.archive;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.sitting.GivenName;
import io.github.tapwright.sitting.Naming;
import io.github.tapwright.sitting.Naming.Suggestion;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.sitting.SittingSummary.Line;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Lists sittings in three queries whatever their number, and never touches strikes and curves. */
final class SittingList {

    private static final String SITTINGS = """
            SELECT s.id, i.shop_number, s.taken_at, s.time_known, s.stage, s.temperature_celsius,
                   s.relative_humidity_percent, s.rested_h, s.hole, s.procedure,
                   (SELECT count(*) FROM recording r WHERE r.sitting_id = s.id) AS recordings
            FROM sitting s JOIN instrument i ON i.id = s.instrument_id
            WHERE ?1 IS NULL OR i.shop_number = ?1
            ORDER BY s.taken_at, s.id
            """;
    private static final String RESONANCES = """
            SELECT a.sitting_id, r.frequency_hz, r.suggested_name
            FROM sitting s
            JOIN instrument i ON i.id = s.instrument_id
            JOIN analysis a ON a.sitting_id = s.id
                AND a.number = (SELECT max(number) FROM analysis WHERE sitting_id = s.id)
            JOIN resonance r ON r.analysis_id = a.id
            WHERE ?1 IS NULL OR i.shop_number = ?1
            ORDER BY a.id, r.ordinal
            """;
    private static final String NAMES = "SELECT * FROM given_name ORDER BY sitting_id, ordinal";

    private SittingList() {}

    private record NameOfSitting(long sitting, GivenName name) {}

    static List<SittingSummary> read(Connection connection, Optional<ShopNumber> instrument) throws SQLException {
        List<String> filter = instrument.map(ShopNumber::text).stream().toList();
        Map<Long, List<Suggestion>> found = suggestions(connection, filter);
        Map<Long, List<GivenName>> names = new HashMap<>();
        for (NameOfSitting n : Query.all(connection, NAMES, SittingList::name)) {
            names.computeIfAbsent(n.sitting(), id -> new ArrayList<>()).add(n.name());
        }
        return all(connection, SITTINGS, row -> summary(row, found, names), filter);
    }

    private static <T> List<T> all(Connection connection, String sql, Query.RowReader<T> reader, List<String> filter)
            throws SQLException {
        return Query.all(connection, sql, reader, filter.toArray());
    }

    private static SittingSummary summary(Row row, Map<Long, List<Suggestion>> found, Map<Long, List<GivenName>> names)
            throws SQLException {
        long id = row.longInteger("id");
        return new SittingSummary(
                new SittingId(id),
                new ShopNumber(row.text("shop_number")),
                SittingReader.takenAt(row),
                ConditionColumns.stage(row),
                ConditionColumns.air(row),
                ConditionColumns.hole(row),
                row.text("procedure"),
                row.integer("recordings"),
                lines(found.getOrDefault(id, List.of()), names.getOrDefault(id, List.of())));
    }

    private static List<Line> lines(List<Suggestion> found, List<GivenName> names) {
        List<Naming.Verdict> verdicts = Naming.join(found, names);
        List<Line> lines = new ArrayList<>(found.size());
        for (int i = 0; i < found.size(); i++) {
            lines.add(new Line(found.get(i).frequencyHz(), verdicts.get(i).name()));
        }
        return lines;
    }

    /** Reads columns by number and looks each name up once, because this runs once for every resonance kept. */
    private static Map<Long, List<Suggestion>> suggestions(Connection connection, List<String> filter)
            throws SQLException {
        Map<String, Optional<ModeName>> names = new HashMap<>();
        Map<Long, List<Suggestion>> found = new HashMap<>();
        try (PreparedStatement statement = connection.prepareStatement(RESONANCES)) {
            if (!filter.isEmpty()) {
                statement.setString(1, filter.get(0));
            }
            try (ResultSet rows = statement.executeQuery()) {
                while (rows.next()) {
                    String key = rows.getString(3);
                    Optional<ModeName> name =
                            key == null ? Optional.empty() : names.computeIfAbsent(key, ModeName::find);
                    found.computeIfAbsent(rows.getLong(1), id -> new ArrayList<>(8))
                            .add(new Suggestion(rows.getDouble(2), name, ""));
                }
            }
        }
        return found;
    }

    private static NameOfSitting name(Row row) throws SQLException {
        return new NameOfSitting(row.longInteger("sitting_id"), SittingReader.name(row));
    }
}
