package io.github.tapwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.InventedResults;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.SittingId;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports as PDF, opened as any reader of PDF would. */
class PdfReportTest {

    @TempDir
    Path folder;

    private ReportedWorkshop workshop;
    private SittingId sitting;

    @BeforeEach
    void open() throws IOException {
        workshop = new ReportedWorkshop(folder, "Heron");
        sitting = workshop.add(
                new Findings.OfTaps(InventedResults.threeResonances()), conditions("one line of a note. ".repeat(400)));
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    @Test
    void theTextOfAClientReportCanBeSelectedAndSaysWhatIsKnownAndWhatNot() throws IOException {
        try (PDDocument pdf = client("client.pdf")) {
            String text = text(pdf);

            assertThat(text)
                    .contains("Guitar 117, “Heron”", "2 of 3 taps could be used")
                    .contains("main air resonance lies at 98.4 ± 0.", "cents above the note G2")
                    .contains("Not written down: hours in this air", "assumed, not measured on this bench")
                    .contains("It cannot tell", "how loud it is", "Protect your eyes");
            assertThat(text).as("letters of the picture").contains("Frequency (Hz)", "187.1 Hz");
            assertThat(text).as("no ligatures, which a search would miss").doesNotContain("ﬁ", "ﬂ");
        }
    }

    @Test
    void aClientReportHasTwoPagesAtMostHoweverLongTheNote() throws IOException {
        try (PDDocument pdf = client("client.pdf")) {
            assertThat(pdf.getNumberOfPages()).isLessThanOrEqualTo(2);
            assertThat(text(pdf)).contains("Page 1 of 2", "Page 2 of 2");
        }
    }

    @Test
    void everyFontIsEmbeddedAndNoPictureIsMadeOfPixels() throws IOException {
        try (PDDocument pdf = client("client.pdf")) {
            assertThat(fonts(pdf)).isNotEmpty().allMatch(PDFont::isEmbedded);
            assertThat(images(pdf)).isEmpty();
        }
    }

    @Test
    void theEmblemIsTheOnlyPictureMadeOfPixels() throws IOException {
        Path png = folder.resolve("emblem.png");
        ImageIO.write(new BufferedImage(90, 40, BufferedImage.TYPE_INT_RGB), "png", png.toFile());
        workshop.shop()
                .edit(new EditShop.Change(
                        Optional.of("Oar Lane workshop"), Optional.of(List.of("Tidewick")), Optional.of(png), false));

        try (PDDocument pdf = client("client.pdf")) {
            assertThat(images(pdf)).hasSize(1).allMatch(i -> i.getWidth() == 90 && i.getHeight() == 40);
            assertThat(text(pdf)).contains("Oar Lane workshop", "Tidewick");
            assertThat(pdf.getDocumentInformation().getAuthor()).isEqualTo("Oar Lane workshop");
        }
    }

    @Test
    void everySectionHasABookmarkAndTheDocumentSaysWhatItIs() throws IOException {
        try (PDDocument pdf = client("client.pdf")) {
            List<String> titles = new ArrayList<>();
            for (PDOutlineItem item :
                    pdf.getDocumentCatalog().getDocumentOutline().children()) {
                titles.add(item.getTitle());
            }
            assertThat(titles)
                    .containsExactly(
                            "In short",
                            "How the body answers",
                            "The named resonances",
                            "Room and set-up",
                            "What this tells, and what it cannot",
                            "Cautions");
            assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("Guitar 117, “Heron”");
            assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
        }
    }

    @Test
    void theSameSittingMakesTheSameBytes() throws IOException {
        client("one.pdf").close();
        client("two.pdf").close();

        assertThat(folder.resolve("two.pdf")).hasSameBinaryContentAs(folder.resolve("one.pdf"));
    }

    @Test
    void aWorkshopReportHoldsEveryStrikeEverySettingAndTheHashOfEveryOriginal() throws IOException {
        Path file = workshop.write(ReportKind.WORKSHOP, new ReportSubject.OfSitting(sitting), "workshop.pdf");
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            String text = text(pdf);

            assertThat(text)
                    .contains("98.420 ± 0.061", "231.60 ± 0.42")
                    .contains("rejected: clipped (7 samples at full scale); double strike (second contact 43 ms later)")
                    .contains("band 60 to 1000 Hz", "invented-1", "one standard uncertainty");
            assertThat(text).containsPattern("SHA-256 [0-9a-f]{64}");
        }
    }

    @Test
    void aComparisonSaysFirstWhetherItMayBeMade() throws IOException {
        SittingId later = workshop.add(new Findings.OfTaps(InventedResults.result(1.05)), conditions("a second time"));
        CompareSittings.Settings settings =
                new CompareSittings.Settings(Optional.empty(), ShopWindow.USUAL, Optional.empty());
        Path file = workshop.write(ReportKind.CLIENT, new ReportSubject.OfTwo(later, sitting, settings), "against.pdf");
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            String text = text(pdf);

            assertThat(text).contains("Compared with sitting 1", "main air is ", "Hz higher");
            assertThat(text.indexOf("May they be compared?")).isLessThan(text.indexOf("In words"));
        }
    }

    @Test
    void aHistoryTooShortForADriftSaysSo() throws IOException {
        Path file = workshop.write(
                ReportKind.CLIENT,
                new ReportSubject.OfHistory(ReportedWorkshop.NUMBER, Optional.empty(), ShopWindow.USUAL),
                "history.pdf");
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            assertThat(text(pdf)).contains("cannot tell whether anything drifts", "What this cannot tell");
        }
    }

    @Test
    void aRecordingInWhichNothingWasFoundGivesAReportThatSaysSo() throws IOException {
        SittingId empty = workshop.add(new Findings.OfTaps(InventedResults.nothing()), Conditions.UNKNOWN);
        Path file = workshop.write(ReportKind.CLIENT, new ReportSubject.OfSitting(empty), "empty.pdf");
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            assertThat(text(pdf))
                    .contains("none stands out from its noise", "No resonance of the body could be told")
                    .contains("Nothing was written down");
        }
    }

    @Test
    void namesFromRightToLeftAndSignsTheFontLacksBreakNothing() throws IOException {
        try (ReportedWorkshop other = new ReportedWorkshop(
                Files.createDirectory(folder.resolve("other")), "<script>&\"' שלום مرحبا 😀 🎸 𝄞")) {
            SittingId id = other.add(new Findings.OfTaps(InventedResults.threeResonances()), Conditions.UNKNOWN);
            Path file = other.write(ReportKind.WORKSHOP, new ReportSubject.OfSitting(id), "names.pdf");
            try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
                assertThat(text(pdf)).contains("<script>&\"'");
                assertThat(pdf.getDocumentInformation().getTitle()).contains("<script>&\"' שלום مرحبا 😀 🎸 𝄞");
            }
        }
    }

    private static Conditions conditions(String note) {
        return new Conditions(
                Optional.of(Stage.STRUNG),
                new Air(Optional.of(20.0), Optional.of(45.0)),
                Conditions.UNKNOWN.strings(),
                HoleState.OPEN,
                Conditions.UNKNOWN.placing(),
                Conditions.UNKNOWN.microphone(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(note));
    }

    private PDDocument client(String name) throws IOException {
        return Loader.loadPDF(workshop.write(ReportKind.CLIENT, new ReportSubject.OfSitting(sitting), name)
                .toFile());
    }

    private static String text(PDDocument pdf) throws IOException {
        return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
    }

    private static List<PDFont> fonts(PDDocument pdf) throws IOException {
        List<PDFont> fonts = new ArrayList<>();
        for (PDResources resources : resources(pdf)) {
            for (COSName name : resources.getFontNames()) {
                fonts.add(resources.getFont(name));
            }
        }
        return fonts;
    }

    private static List<PDImageXObject> images(PDDocument pdf) throws IOException {
        List<PDImageXObject> images = new ArrayList<>();
        for (PDResources resources : resources(pdf)) {
            for (COSName name : resources.getXObjectNames()) {
                if (resources.getXObject(name) instanceof PDImageXObject image) {
                    images.add(image);
                }
            }
        }
        return images;
    }

    /** Those of the pages and of every form within them. */
    private static List<PDResources> resources(PDDocument pdf) throws IOException {
        List<PDResources> all = new ArrayList<>();
        for (PDPage page : pdf.getPages()) {
            collect(page.getResources(), all);
        }
        return all;
    }

    private static void collect(PDResources resources, List<PDResources> all) throws IOException {
        all.add(resources);
        for (COSName name : resources.getXObjectNames()) {
            PDXObject object = resources.getXObject(name);
            if (object instanceof PDFormXObject form && form.getResources() != null) {
                collect(form.getResources(), all);
            }
        }
    }
}
