package io.github.tapwright.archive;

import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.Procedure;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Reads a sitting's analyses back from the tables of its procedure. */
final class AnalysisReader {

    /** Where the analyses of each procedure lie. */
    static final Map<String, String> TABLES = new TreeMap<>(Map.of(
            Procedure.BodyTaps.KEY, "analysis",
            Procedure.NoteRun.KEY, "note_analysis",
            Procedure.OpenPlucks.KEY, "pluck_analysis"));

    private final Connection connection;

    AnalysisReader(Connection connection) {
        this.connection = connection;
    }

    /** Oldest first; empty if the sitting has none, which is damage. */
    List<Analysis> of(long sittingId, String procedure) throws SQLException, IOException {
        return switch (procedure) {
            case Procedure.BodyTaps.KEY -> new TapsReader(connection).of(sittingId);
            case Procedure.NoteRun.KEY -> new NotesReader(connection).of(sittingId);
            case Procedure.OpenPlucks.KEY -> new PlucksReader(connection).of(sittingId);
            default ->
                throw new ArchiveException("sitting " + sittingId + " is of the kind \"" + procedure
                        + "\", which this program does not know; use the program that wrote it");
        };
    }
}
