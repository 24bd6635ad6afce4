package io.github.tapwright.archive;

import io.github.tapwright.sitting.Original;
import io.github.tapwright.sitting.Progress;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads every byte of an archive and compares it with what should be there; changes nothing. */
final class ArchiveCheck {

    private static final String SOUND = "ok";

    private final ArchiveFolder folder;
    private final Database database;
    private final List<String> problems = new ArrayList<>();

    ArchiveCheck(ArchiveFolder folder, Database database) {
        this.folder = folder;
        this.database = database;
    }

    /** What the database expects beside it. */
    private record Expected(long sittingCount, long calibrationCount, Map<String, Original> originals) {}

    VerifyReport run(Progress progress) {
        progress.at("checking the database", 0, 1);
        Expected expected = database.read(this::checkDatabase);
        try {
            return checkFiles(expected, progress);
        } catch (IOException e) {
            throw Trouble.with(folder.originals(), e);
        }
    }

    private Expected checkDatabase(Connection connection) throws SQLException, IOException {
        Query.all(connection, "PRAGMA integrity_check", row -> row.text("integrity_check")).stream()
                .filter(line -> !line.equals(SOUND))
                .forEach(line -> problems.add("database: " + line));
        Query.all(connection, "PRAGMA foreign_key_check", row -> row.text("table")).stream()
                .distinct()
                .forEach(table -> problems.add("database: a row of " + table + " refers to something that is gone"));
        report(connection, "TRUE", "recording", "recording");
        for (Map.Entry<String, String> kind : AnalysisReader.TABLES.entrySet()) {
            report(connection, "procedure = '" + kind.getKey() + "'", kind.getValue(), "analysis");
        }
        String known =
                AnalysisReader.TABLES.keySet().stream().map(k -> "'" + k + "'").collect(Collectors.joining(", "));
        String strange = "SELECT id FROM sitting WHERE procedure NOT IN (" + known + ")";
        Query.all(connection, strange, row -> row.longInteger("id"))
                .forEach(id -> problems.add("database: sitting " + id + " is of a kind this program does not know"));
        TapDigestTable.wrong(connection)
                .forEach(id -> problems.add("database: the digest of sitting " + id + " is not that of its results"));
        Map<String, Original> originals = new HashMap<>();
        for (Original original : OriginalTable.all(connection)) {
            originals.put(original.sha256(), original);
        }
        return new Expected(count(connection, "sitting"), count(connection, "calibration"), originals);
    }

    /** Reports the sittings of a kind that have no row in the table of one of their parts. */
    private void report(Connection connection, String which, String table, String part) throws SQLException {
        String halves =
                "SELECT id FROM sitting WHERE " + which + " AND id NOT IN (SELECT sitting_id FROM " + table + ")";
        Query.all(connection, halves, row -> row.longInteger("id"))
                .forEach(id -> problems.add("database: sitting " + id + " has no " + part));
    }

    private static long count(Connection connection, String table) throws SQLException {
        return Query.one(connection, "SELECT count(*) AS n FROM " + table, row -> row.longInteger("n"))
                .orElse(0L);
    }

    private VerifyReport checkFiles(Expected expected, Progress progress) throws IOException {
        OriginalFiles files = OriginalFiles.in(folder);
        List<Original> unknown =
                files.originals().stream().filter(o -> !isExpected(expected, o)).toList();
        List<Original> all = Stream.concat(expected.originals().values().stream(), unknown.stream())
                .toList();
        List<Path> unreferenced = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Original original = all.get(i);
            progress.at("reading " + original.sha256(), i, all.size());
            if (sound(original) && i >= expected.originals().size()) {
                unreferenced.add(Path.of(ArchiveFolder.relative(original)));
            }
        }
        files.strangers().forEach(f -> problems.add(f + " is not an original; move it out of the archive's folder"));
        List<Path> temporary =
                files.temporary().stream().map(folder.root()::relativize).toList();
        return new VerifyReport(
                expected.sittingCount(), expected.calibrationCount(), all.size(), problems, unreferenced, temporary);
    }

    private static boolean isExpected(Expected expected, Original found) {
        Original known = expected.originals().get(found.sha256());
        return known != null && known.extension().equals(found.extension());
    }

    private boolean sound(Original original) throws IOException {
        Path file = folder.original(original);
        Originals.OriginalState state = Originals.OriginalState.of(file, original);
        if (state != Originals.OriginalState.SOUND) {
            problems.add(file + " " + state.words() + "; put a good copy in its place, from a backup");
        }
        return state == Originals.OriginalState.SOUND;
    }
}
