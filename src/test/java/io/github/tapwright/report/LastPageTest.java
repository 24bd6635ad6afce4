package io.github.tapwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.InventedResults;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.played.InventedRun;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.SittingId;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The last page of a report never holds the cautions alone: a few lines on an empty page would look forgotten. */
class LastPageTest {

    private static final String BEFORE = "What this tells, and what it cannot";
    private static final CompareSittings.Settings USUAL =
            new CompareSittings.Settings(Optional.empty(), ShopWindow.USUAL, Optional.empty());

    private final Random chance = new Random(7);

    @TempDir
    Path folder;

    /** As many lines as fill more than a page, so that at one length or another the page ends anywhere in what follows. */
    @Test
    void whereverAPageEndsTheCautionsHaveTheSectionBeforeThemBeside() throws IOException {
        for (int lines = 2; lines < 62; lines += 3) {
            try (PDDocument pdf = Loader.loadPDF(PdfPage.of(filled(lines, 12)))) {
                String last = lastPage(pdf);

                assertThat(last).as("%d lines", lines).contains("Cautions", "Protect your eyes", BEFORE);
                assertThat(pdf.getNumberOfPages()).as("%d lines", lines).isLessThanOrEqualTo(2);
            }
        }
    }

    @Test
    void aSectionLongerThanAPageBeforeTheCautionsLosesNothing() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(PdfPage.of(filled(20, 90)))) {
            String text = new PDFTextStripper().getText(pdf);

            assertThat(text).contains("20 lines before", "line 1 of 90", "line 90 of 90", "Protect your eyes");
            assertThat(pdf.getNumberOfPages()).isEqualTo(3);
        }
    }

    @ParameterizedTest
    @EnumSource(ReportKind.class)
    void reportsOfEveryKindOfSittingEndSo(ReportKind kind) throws IOException {
        String before = kind == ReportKind.CLIENT ? BEFORE : "The figures above are those of the last analysis";
        try (ReportedWorkshop workshop = new ReportedWorkshop(folder, "Heron")) {
            for (ReportSubject subject : subjects(workshop)) {
                try (PDDocument pdf = Loader.loadPDF(
                        workshop.write(kind, subject, "report.pdf").toFile())) {
                    assertThat(lastPage(pdf))
                            .as("%s", subject)
                            .contains("Cautions", "Protect your eyes")
                            .containsPattern(before + "|What the ± mean");
                }
            }
        }
    }

    private List<ReportSubject> subjects(ReportedWorkshop workshop) throws IOException {
        InventedRun usual = InventedRun.of(1, 0);
        InventedRun dead = new InventedRun(1, 0, 0.1, 1, List.of(new Fret(3, 5), new Fret(2, 7)));
        SittingId taps = workshop.add(new Findings.OfTaps(InventedResults.threeResonances()), Conditions.UNKNOWN);
        SittingId tapsToo = workshop.add(new Findings.OfTaps(InventedResults.result(1.05)), talkative());
        SittingId notes =
                workshop.add(new Findings.OfNotes(usual.played(InventedRun.SIX_STRINGS, chance)), Conditions.UNKNOWN);
        SittingId notesToo =
                workshop.add(new Findings.OfNotes(dead.played(InventedRun.SIX_STRINGS, chance)), talkative());
        SittingId plucks = workshop.add(InventedPlucks.louder(0, chance), Conditions.UNKNOWN);
        SittingId plucksToo = workshop.add(InventedPlucks.louder(3, chance), talkative());
        return List.of(
                new ReportSubject.OfSitting(taps),
                new ReportSubject.OfSitting(tapsToo),
                new ReportSubject.OfTwo(tapsToo, taps, USUAL),
                new ReportSubject.OfSitting(notes),
                new ReportSubject.OfSitting(notesToo),
                new ReportSubject.OfTwo(notesToo, notes, USUAL),
                new ReportSubject.OfSitting(plucks),
                new ReportSubject.OfSitting(plucksToo),
                new ReportSubject.OfTwo(plucksToo, plucks, USUAL));
    }

    private static Conditions talkative() {
        return new Conditions(
                Optional.empty(),
                Conditions.UNKNOWN.air(),
                Conditions.UNKNOWN.strings(),
                HoleState.OPEN,
                Conditions.UNKNOWN.placing(),
                Conditions.UNKNOWN.microphone(),
                Optional.empty(),
                Optional.empty(),
                Optional.of("one line of a note. ".repeat(40)));
    }

    private static Report filled(int lines, int linesBefore) {
        return new Report(
                "Guitar 117",
                List.of("invented"),
                List.of(
                        Section.of(lines + " lines before", Words.list(Collections.nCopies(lines, "one line"))),
                        Section.of(
                                BEFORE,
                                Words.list(IntStream.rangeClosed(1, linesBefore)
                                        .mapToObj(i -> "line " + i + " of " + linesBefore)
                                        .toList())),
                        Cautions.section()),
                new Pictures(),
                new ShopHead(Optional.empty(), List.of(), Optional.empty()),
                ReportedWorkshop.NOON,
                "2026-03-14");
    }

    private static String lastPage(PDDocument pdf) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(pdf.getNumberOfPages());
        return stripper.getText(pdf).replaceAll("\\s+", " ");
    }
}
