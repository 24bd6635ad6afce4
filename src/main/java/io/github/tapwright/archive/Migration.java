package io.github.tapwright.archive;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * One step from an archive's version to the next.
 *
 * @param version the version the database has afterwards
 * @param statements SQL, one statement each
 */
record Migration(int version, List<String> statements) {

    private static final List<String> RESOURCES = List.of(
            "001-instruments-and-sittings.sql",
            "002-nothing-is-lost.sql",
            "003-calibrations.sql",
            "004-notes-and-plucks.sql",
            "005-bench-studies.sql",
            "006-added-mass-and-rest.sql",
            "007-live-recordings.sql",
            "008-shop.sql",
            "009-digests.sql",
            "010-listening.sql",
            "011-table-sums.sql",
            "012-slips.sql");

    private static final Map<Integer, SqlWork<Integer>> FILLINGS = Map.of(9, TapDigestTable::fill);

    Migration {
        statements = List.copyOf(statements);
    }

    /** What SQL alone cannot work out from what is there; runs after the statements, in the same transaction. */
    SqlWork<Integer> filling() {
        return FILLINGS.getOrDefault(version, connection -> 0);
    }

    /** The steps this program knows, oldest first; the number that begins a name is the version. */
    static List<Migration> known() {
        return RESOURCES.stream().map(Migration::resource).toList();
    }

    static Migration of(int version, String sql) {
        String withoutComments = sql.replaceAll("(?m)^\\s*--.*$", "");
        // A trigger's body has semicolons of its own; its statement ends with the semicolon after END.
        Pattern statement = Pattern.compile("\\s*CREATE TRIGGER.*?\\bEND(?=;)|[^;]+", Pattern.DOTALL);
        return new Migration(
                version,
                statement
                        .matcher(withoutComments)
                        .results()
                        .map(r -> r.group().strip())
                        .filter(s -> !s.isEmpty())
                        .toList());
    }

    private static Migration resource(String name) {
        try (InputStream in = Migration.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its resource " + name);
            }
            String sql = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return of(Integer.parseInt(name.substring(0, name.indexOf('-'))), sql);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
