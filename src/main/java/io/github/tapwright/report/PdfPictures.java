package io.github.tapwright.report;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.extend.UserAgentCallback;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import io.github.tapwright.chart.Lettering;
import io.github.tapwright.chart.PagePicture;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.w3c.dom.Element;

/**
 * Draws the pictures of a report into a PDF: the report's own straight from their drawing, so that their letters stay text that can be
 * selected; any other SVG, such as the workshop's emblem, by its shapes.
 */
final class PdfPictures implements SVGDrawer {

    private final Pictures pictures;
    private final BatikSVGDrawer other = new BatikSVGDrawer();
    private final Map<Lettering, PDFont> fonts = new EnumMap<>(Lettering.class);

    PdfPictures(Pictures pictures, PDDocument document) throws IOException {
        this.pictures = pictures;
        for (Lettering lettering : Lettering.values()) {
            fonts.put(lettering, load(lettering, document));
        }
    }

    /** Without ligatures, so that a reader who looks for "figure" finds it. */
    private static PDFont load(Lettering lettering, PDDocument document) throws IOException {
        try (InputStream in = lettering.open()) {
            TrueTypeFont letters = new TTFParser().parse(new RandomAccessReadBuffer(in));
            letters.setEnableGsub(false);
            return PDType0Font.load(document, letters, true);
        }
    }

    PDFont letters(Lettering lettering) {
        return Objects.requireNonNull(fonts.get(lettering), "every lettering is loaded");
    }

    @Override
    public SVGImage buildSVGImage(
            Element svg, Box box, CssContext css, double cssWidth, double cssHeight, double dotsPerPixel) {
        return pictures.find(svg.getAttribute("id"))
                .<SVGImage>map(p -> new Drawn(p, cssWidth, dotsPerPixel))
                .orElseGet(() -> other.buildSVGImage(svg, box, css, cssWidth, cssHeight, dotsPerPixel));
    }

    @Override
    public void importFontFaceRules(List<FontFaceRule> rules, SharedContext context) {
        other.importFontFaceRules(rules, context);
    }

    @Override
    public void withUserAgent(UserAgentCallback userAgent) {
        other.withUserAgent(userAgent);
    }

    @Override
    public void addFontFile(File file, String family, Integer weight, FontStyle style)
            throws IOException, FontFormatException {
        other.addFontFile(file, family, weight, style);
    }

    @Override
    public void close() {
        other.close();
    }

    /** One of the report's pictures over the width the page gives it. */
    private final class Drawn implements SVGImage {

        private final PagePicture picture;
        private final double width;
        private final double dotsPerPixel;

        Drawn(PagePicture picture, double cssWidth, double dotsPerPixel) {
            this.picture = picture;
            this.width = cssWidth > 0 ? cssWidth : picture.width() * dotsPerPixel;
            this.dotsPerPixel = dotsPerPixel;
        }

        private double height() {
            return width * picture.height() / picture.width();
        }

        @Override
        public int getIntrinsicWidth() {
            return (int) Math.round(width);
        }

        @Override
        public int getIntrinsicHeight() {
            return (int) Math.round(height());
        }

        @Override
        public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
            device.drawWithGraphics(
                    (float) x,
                    (float) y,
                    (float) (width / dotsPerPixel),
                    (float) (height() / dotsPerPixel),
                    g2 -> draw(g2));
        }

        private void draw(Graphics2D g2) {
            if (g2 instanceof PdfBoxGraphics2D pdf) {
                pdf.setFontTextDrawer(new Letters());
            }
            double scale = width / dotsPerPixel / picture.width();
            g2.scale(scale, scale);
            picture.draw(g2);
        }
    }

    /** Gives every letter of a picture the embedded font of its weight. */
    private final class Letters extends PdfBoxGraphics2DFontTextDrawer {

        @Override
        protected PDFont mapFont(Font font, IFontTextDrawerEnv environment) {
            return letters(font.isBold() ? Lettering.BOLD : Lettering.PLAIN);
        }
    }
}
