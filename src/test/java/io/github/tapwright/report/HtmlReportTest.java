package io.github.tapwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.InventedResults;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.SittingId;
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
