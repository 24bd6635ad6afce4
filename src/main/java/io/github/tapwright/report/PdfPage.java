package io.github.tapwright.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import io.github.tapwright.chart.Lettering;
import io.github.tapwright.report.xhtml.Markup;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** Writes a report as PDF: tagged for readers that speak, letters embedded, pictures drawn as lines and text. */
final class PdfPage {

    private static final int NORMAL = 400;
    private static final int BOLD = 700;

    private PdfPage() {}

    /** The bytes of the document; the same for the same report. */
    static byte[] of(Report report) throws IOException {
        XRLog.setLoggingEnabled(false);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument();
                PdfPictures pictures = new PdfPictures(report.pictures(), document);
                PdfBoxRenderer renderer =
                        builder(report, document, pictures).toStream(out).buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
            PDDocument made = renderer.getPdfDocument();
            sign(made, report);
            made.save(out);
        }
        return out.toByteArray();
    }

    private static PdfRendererBuilder builder(Report report, PDDocument document, PdfPictures pictures) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePDDocument(document);
        builder.usePdfUaAccessibility(true);
        builder.withProducer("Tapwright");
        builder.useReplacementText("\u25A1");
        font(builder, pictures.letters(Lettering.PLAIN), NORMAL);
        font(builder, pictures.letters(Lettering.BOLD), BOLD);
        builder.useSVGDrawer(pictures);
        builder.useUriResolver(
                (base, address) -> address.startsWith("#") || address.startsWith("data:") ? address : null);
        builder.withHtmlContent(Markup.document(Template.forPaper(report)), "");
        return builder;
    }

    private static void font(PdfRendererBuilder builder, PDFont letters, int weight) {
        builder.useFont(new PDFontSupplier(letters), Lettering.FAMILY, weight, FontStyle.NORMAL, true);
    }

    /** What would otherwise be the time of day or chance comes from the report, so that the same report is the same file. */
    private static void sign(PDDocument document, Report report) {
        Calendar made = calendar(report.madeAt());
        document.getDocumentInformation().setCreationDate(made);
        document.getDocumentInformation().setModificationDate(made);
        document.getDocumentCatalog().setLanguage(Template.LANGUAGE);
        document.setDocumentId(report.madeAt().toEpochMilli());
    }

    private static Calendar calendar(Instant at) {
        Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        calendar.setTimeInMillis(at.toEpochMilli());
        return calendar;
    }
}
