package io.github.tapwright.archive;

import io.github.tapwright.archive.VerifyReport.WaitingRecording;
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
import java.util.stream.Stream;

/** Reads every byte of an archive and compares it with what should be there; changes nothing. */
final class ArchiveCheck {

    private final ArchiveFolder folder;
    private final Database database;
    private final CaptureTables captures;
    private final List<String> problems = new ArrayList<>();

    ArchiveCheck(ArchiveFolder folder, Database database, CaptureTables captures) {
        this.folder = folder;
        this.database = database;
        this.captures = captures;
    }

    /** What the database expects beside it. */
    private record Expected(long sittingCount, long calibrationCount, Map<String, Original> originals) {}

    VerifyReport run(Progress progress) {
        progress.at("checking the database", 0, 1);
        try {
            problems.addAll(new ReadingCheck(database, folder).problems());
            return checkFiles(expected(), progress);
        } catch (IOException e) {
            throw Trouble.with(folder.originals(), e);
        } finally {
            progress.end();
        }
    }

    /** Nothing if the database is too damaged to say; the files are looked at all the same. */
    private Expected expected() {
        try {
            return database.read(ArchiveCheck::expected);
        } catch (ArchiveException e) {
            if (Trouble.willPass(e)) {
                throw e;
            }
            problems.add("database: the list of originals cannot be read: " + e.getMessage());
            return new Expected(0, 0, Map.of());
        }
    }

    private static Expected expected(Connection connection) throws SQLException {
        Map<String, Original> originals = new HashMap<>();
        for (Original original : OriginalTable.all(connection)) {
            originals.put(original.sha256(), original);
        }
        return new Expected(count(connection, "sitting"), count(connection, "calibration"), originals);
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
        List<Path> recorded = folder.captureFiles(); // before the database is asked: one may begin meanwhile
        List<WaitingRecording> waiting = waiting();
        List<Path> temporary = Stream.concat(files.temporary().stream(), recorded.stream())
                .map(folder.root()::relativize)
                .filter(p -> waiting.stream().noneMatch(w -> w.file().equals(p)))
                .toList();
        return new VerifyReport(
                expected.sittingCount(),
                expected.calibrationCount(),
                all.size(),
                problems,
                unreferenced,
                temporary,
                waiting);
    }

    private List<WaitingRecording> waiting() throws IOException {
        try {
            return captures.waiting();
        } catch (ArchiveException e) {
            if (Trouble.willPass(e)) {
                throw e;
            }
            problems.add("database: the list of recordings that wait cannot be read: " + e.getMessage());
            return List.of();
        }
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
