package io.github.tapwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.InventedResults;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.GivenName;
import io.github.tapwright.sitting.SittingId;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Reports of a workshop where every field one can type into holds text that would do harm as anything but text. */
class HostileReportTest {

    /** Elements that run, fetch or take the reader elsewhere; a report has none of them. */
    private static final Set<String> HARMFUL =
            Set.of("script", "img", "iframe", "a", "form", "object", "embed", "link", "base");

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource(HostileText.class)
    void everyHtmlReportHoldsTextAndNothingThatRuns(HostileText text) throws Exception {
        try (ReportedWorkshop workshop = workshop(text)) {
            List<ReportSubject> subjects = subjects(text, workshop);
            assertHarmless(workshop.write(ReportKind.CLIENT, subjects.get(0), "report.html"));
            for (ReportSubject subject : subjects) {
                assertHarmless(workshop.write(ReportKind.WORKSHOP, subject, "report.html"));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"ATTRIBUTE", "CONTROLS", "HALF_A_PAIR", "LONG"})
    void aPdfReportHoldsTextAndNothingThatRuns(HostileText text) throws IOException {
        try (ReportedWorkshop workshop = workshop(text)) {
            Path file =
                    workshop.write(ReportKind.WORKSHOP, subjects(text, workshop).get(1), "report.pdf");
            try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
                assertHarmless(pdf);
            }
        }
    }

    private ReportedWorkshop workshop(HostileText text) throws IOException {
        ReportedWorkshop workshop = new ReportedWorkshop(folder, text.instrument());
        workshop.shop()
                .edit(new EditShop.Change(
                        Optional.of(text.line()),
                        Optional.of(List.of(text.line(), text.line())),
                        Optional.empty(),
                        false));
        return workshop;
    }

    private static List<ReportSubject> subjects(HostileText text, ReportedWorkshop workshop) throws IOException {
        SittingId first = add(text, workshop, "1");
        SittingId second = add(text, workshop, "2");
        return List.of(
                new ReportSubject.OfSitting(second),
                new ReportSubject.OfTwo(
                        second,
                        first,
                        new CompareSittings.Settings(Optional.empty(), ShopWindow.USUAL, Optional.of(text.line()))),
                new ReportSubject.OfHistory(text.instrument().shopNumber(), Optional.empty(), ShopWindow.USUAL));
    }

    private static SittingId add(HostileText text, ReportedWorkshop workshop, String number) throws IOException {
        SittingId id = workshop.add(
                new Findings.OfTaps(InventedResults.threeResonances()),
                text.conditions(),
                text.fileName() + number + ".wav",
                List.of(text.line()));
        workshop.name(id, new GivenName(187.13, Optional.of(text.line()), ReportedWorkshop.NOON));
        return id;
    }

    private static void assertHarmless(Path html) throws Exception {
        Document document =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(html.toFile());
        var all = document.getElementsByTagName("*");
        IntStream.range(0, all.getLength()).mapToObj(i -> (Element) all.item(i)).forEach(element -> {
            assertThat(HARMFUL).doesNotContain(element.getTagName().toLowerCase(Locale.ROOT));
            var attributes = element.getAttributes();
            for (int i = 0; i < attributes.getLength(); i++) {
                assertThat(attributes.item(i).getNodeName()).doesNotStartWith("on");
            }
        });
        assertThat(Files.readString(html)).doesNotContainIgnoringCase("<script", "<img src=x");
        assertThat(document.getDocumentElement().getTextContent()).contains("harmless end");
    }

    private static void assertHarmless(PDDocument pdf) throws IOException {
        assertThat(pdf.getDocumentCatalog().getOpenAction()).isNull();
        assertThat(pdf.getDocumentCatalog().getNames()).isNull();
        for (PDPage page : pdf.getPages()) {
            assertThat(page.getAnnotations()).noneMatch(a -> "Link".equals(a.getSubtype()) || runs(a));
        }
        assertThat(new PDFTextStripper().getText(pdf).replaceAll("\\s+", "")).contains("harmlessend");
    }

    private static boolean runs(PDAnnotation annotation) {
        return annotation.getCOSObject().containsKey("A")
                || annotation.getCOSObject().containsKey("AA");
    }
}
