package io.github.tapwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.InventedResults;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.note.NoteAnalysis;
import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.NoteSettings;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.StringNote;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Reports as HTML: well-formed, whole in one file, and free of anything a user could have put into it. */
class HtmlReportTest {

    private static final String NASTY = "<script>alert(1)</script> & \" ' --> ]]> </style> 🎸 שלום";

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource(ReportKind.class)
    void whateverAUserTypedStaysText(ReportKind kind) throws Exception {
        try (ReportedWorkshop workshop = new ReportedWorkshop(folder, NASTY)) {
            workshop.shop()
                    .edit(new EditShop.Change(
                            Optional.of(NASTY), Optional.of(List.of(NASTY)), Optional.empty(), false));
            SittingId id = workshop.add(new Findings.OfTaps(InventedResults.threeResonances()), nastyNote());
            Path file = workshop.write(kind, new ReportSubject.OfSitting(id), "report.html");

            Document document = read(file);
            assertThat(document.getElementsByTagName("script").getLength()).isZero();
            assertThat(document.getElementsByTagName("h1").item(0).getTextContent())
                    .contains(NASTY);
            assertThat(document.getElementsByTagName("style").getLength()).isOne();
            assertThat(document.getElementsByTagName("header").item(0).getTextContent())
                    .contains(NASTY);
        }
    }

    @Test
    void theFileNeedsNothingFromElsewhereAndItsPictureIsDrawnInLines() throws Exception {
        try (ReportedWorkshop workshop = new ReportedWorkshop(folder, "Heron")) {
            SittingId id = workshop.add(new Findings.OfTaps(InventedResults.threeResonances()), Conditions.UNKNOWN);
            Path file = workshop.write(ReportKind.WORKSHOP, new ReportSubject.OfSitting(id), "report.html");

            Document document = read(file);
            Element svg = (Element) document.getElementsByTagName("svg").item(0);
            assertThat(svg.getAttribute("aria-label")).isNotEmpty();
            assertThat(svg.getElementsByTagName("path").getLength()).isGreaterThan(1);
            assertThat(svg.getTextContent()).contains("main air", "187.13 ± 0.11 Hz");
            NodeList all = document.getElementsByTagName("*");
            for (int i = 0; i < all.getLength(); i++) {
                Element element = (Element) all.item(i);
                assertThat(element.getAttribute("src") + element.getAttribute("href"))
                        .doesNotContain("http");
            }
            assertThat(document.getDocumentElement().getAttribute("lang")).isEqualTo("en");
        }
    }

    @Test
    void theSameSittingMakesTheSameFile() throws IOException {
        try (ReportedWorkshop workshop = new ReportedWorkshop(folder, "Heron")) {
            SittingId id = workshop.add(new Findings.OfTaps(InventedResults.threeResonances()), Conditions.UNKNOWN);
            ReportSubject subject = new ReportSubject.OfSitting(id);

            assertThat(workshop.write(ReportKind.CLIENT, subject, "one.html"))
                    .hasSameTextualContentAs(workshop.write(ReportKind.CLIENT, subject, "two.html"));
        }
    }

    /** Without levels the next map, pitch, must not stand where the words speak of level. */
    @Test
    void aClientSeesDecayAndLevelOrWhatThereIsOfThem() throws Exception {
        NoteResult d3 = NoteAnalysis.analyse(
                StringNote.plain(146.83, 5e-5, 2.5, 3).recording(22_050, Chance.seeded(3)).stream(),
                NoteSettings.STANDARD);
        Fingerboard board = new Fingerboard(
                List.of(new Fingerboard.Note(0, 0.1, d3, Optional.empty(), Optional.of(new Fret(4, 0)))),
                List.of(),
                List.of(),
                Fingerboard.Settings.STANDARD,
                "invented-1");
        try (ReportedWorkshop workshop = new ReportedWorkshop(folder, "Heron")) {
            SittingId id = workshop.add(new Findings.OfNotes(board), Conditions.UNKNOWN);
            Path file = workshop.write(ReportKind.CLIENT, new ReportSubject.OfSitting(id), "report.html");

            Element svg = (Element) read(file).getElementsByTagName("svg").item(0);
            assertThat(svg.getAttribute("aria-label")).contains("Early decay").doesNotContain("level", "Pitch");
        }
    }

    @Test
    void aFileOfAnotherKindIsRefusedBeforeAnyWork() {
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> MakeReport.requireKnownEnding(Path.of("report.docx")))
                .withMessageContaining(".pdf or .html");
    }

    private static Conditions nastyNote() {
        return new Conditions(
                Optional.empty(),
                Conditions.UNKNOWN.air(),
                Conditions.UNKNOWN.strings(),
                Conditions.UNKNOWN.hole(),
                Conditions.UNKNOWN.placing(),
                Conditions.UNKNOWN.microphone(),
                Optional.empty(),
                Optional.of(NASTY),
                Optional.of(NASTY + "\u0001\uD800"));
    }

    private static Document read(Path file) throws Exception {
        String text = Files.readString(file);
        assertThat(text).startsWith("<!DOCTYPE html>");
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
    }
}
