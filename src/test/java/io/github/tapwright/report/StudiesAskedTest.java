package io.github.tapwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.InventedResults;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.played.InventedRun;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.SittingId;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A study kept is worked out anew from its sittings whenever it is asked for; a report asks once, and for what it needs. */
class StudiesAskedTest {

    private final Random chance = new Random(5);

    @TempDir
    Path folder;

    private ReportedWorkshop workshop;

    @BeforeEach
    void open() {
        workshop = new ReportedWorkshop(folder, "Heron");
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    @Test
    void aReportOfTwoSittingsOfTapsAsksForTheStudyOfTapsOnce() throws IOException {
        report(
                new Findings.OfTaps(InventedResults.threeResonances()),
                new Findings.OfTaps(InventedResults.result(1.01)));

        assertThat(workshop.studiesAsked()).containsExactly("taps");
    }

    @Test
    void aReportOfTwoSittingsOfNotesAsksForNoStudyOfTaps() throws IOException {
        InventedRun run = InventedRun.of(1, 0);
        report(
                new Findings.OfNotes(run.played(InventedRun.SIX_STRINGS, chance)),
                new Findings.OfNotes(run.played(InventedRun.SIX_STRINGS, chance)));

        assertThat(workshop.studiesAsked()).containsExactly("notes");
    }

    @Test
    void aHistoryAsksForTheStudyOfPlucksOnlyWhereThereArePlucks() throws IOException {
        workshop.add(new Findings.OfTaps(InventedResults.threeResonances()), Conditions.UNKNOWN);
        history();
        assertThat(workshop.studiesAsked()).containsExactly("taps");

        workshop.add(InventedPlucks.louder(0, chance), Conditions.UNKNOWN);
        history();
        assertThat(workshop.studiesAsked()).containsExactly("taps", "taps", "plucks");
    }

    private void history() throws IOException {
        workshop.write(
                ReportKind.CLIENT,
                new ReportSubject.OfHistory(ReportedWorkshop.NUMBER, Optional.empty(), ShopWindow.USUAL),
                "history.html");
    }

    private void report(Findings before, Findings after) throws IOException {
        SittingId a = workshop.add(before, Conditions.UNKNOWN);
        SittingId b = workshop.add(after, Conditions.UNKNOWN);
        CompareSittings.Settings settings =
                new CompareSittings.Settings(Optional.empty(), ShopWindow.USUAL, Optional.empty());
        workshop.write(ReportKind.CLIENT, new ReportSubject.OfTwo(b, a, settings), "two.html");
    }
}
