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
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Lists sittings in three queries whatever their number, and never touches strikes and curves. */
final class SittingList {

    private static final String SITTINGS = """
            SELECT s.id, i.shop_number, s.taken_at, s.time_known, s.stage, s.temperature_celsius,
                   s.relative_humidity_percent, s.hole,
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

    private record SuggestionOfSitting(long sitting, Suggestion suggestion) {}

    private record NameOfSitting(long sitting, GivenName name) {}

    static List<SittingSummary> read(Connection connection, Optional<ShopNumber> instrument) throws SQLException {
        List<String> filter = instrument.map(ShopNumber::text).stream().toList();
        Map<Long, List<Suggestion>> found = new HashMap<>();
        for (SuggestionOfSitting s : all(connection, RESONANCES, SittingList::suggestion, filter)) {
            found.computeIfAbsent(s.sitting(), id -> new ArrayList<>()).add(s.suggestion());
        }
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
                row.integer("recordings"),
                lines(found.getOrDefault(id, List.of()), names.getOrDefault(id, List.of())));
    }

    private static List<Line> lines(List<Suggestion> found, List<GivenName> names) {
        List<Naming.Verdict> verdicts = Naming.join(found, names);
        return IntStream.range(0, found.size())
                .mapToObj(i ->
                        new Line(found.get(i).frequencyHz(), verdicts.get(i).name()))
                .toList();
    }

    private static SuggestionOfSitting suggestion(Row row) throws SQLException {
        Optional<ModeName> name = row.key("suggested_name", ModeName::find);
        return new SuggestionOfSitting(
                row.longInteger("sitting_id"), new Suggestion(row.number("frequency_hz"), name, ""));
    }

    private static NameOfSitting name(Row row) throws SQLException {
        return new NameOfSitting(row.longInteger("sitting_id"), SittingReader.name(row));
    }
}
