package io.github.tapwright.archive;

import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.NewAnalysis;
import io.github.tapwright.sitting.PluckRun;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;

/** Writes an analysis into the tables of its procedure. */
final class AnalysisWriter {

    private final Connection connection;

    AnalysisWriter(Connection connection) {
        this.connection = connection;
    }

    void write(long sittingId, int number, NewAnalysis analysis) throws SQLException, IOException {
        if (analysis.findings() instanceof Findings.OfTaps found) {
            new TapsWriter(connection).write(sittingId, number, analysis.madeAt(), found.result());
        } else if (analysis.findings() instanceof Findings.OfNotes found) {
            new NotesWriter(connection).write(sittingId, number, analysis.madeAt(), found.board());
        } else {
            PluckRun run = ((Findings.OfPlucks) analysis.findings()).run();
            new PlucksWriter(connection).write(sittingId, number, analysis.madeAt(), run);
        }
    }
}
