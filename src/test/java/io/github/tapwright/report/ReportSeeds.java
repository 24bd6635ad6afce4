package io.github.tapwright.report;

import io.github.tapwright.fuzz.SeedFolder;
import io.github.tapwright.report.xhtml.MarkupSeeds;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** Seeds of what a report takes in: pictures and texts. */
public final class ReportSeeds {

    private static final String SVG = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9\" height=\"9\">%s</svg>";

    private ReportSeeds() {}

    public static void write(Path resources) throws IOException {
        new SeedFolder(resources, EmblemFuzzTest.class, "isTakenOrRefused")
                .put("plain.svg", SVG.formatted("<g><rect width=\"9\" height=\"9\" style=\"fill:#fff\"/></g>"))
                .put("script.svg", SVG.formatted("<script>alert(1)</script>"))
                .put("entity.svg", "<!DOCTYPE svg [<!ENTITY a \"aaaa\">]><svg><text>&a;</text></svg>")
                .put("name.svg", SVG.formatted("<\u00E9l\u00E9ment/>"))
                .put("attribute.svg", SVG.formatted("<g data_x=\"1\" _y=\"2\"/>"))
                .put("deep.svg", SVG.formatted("<g>".repeat(3000) + "</g>".repeat(3000)))
                .put("pixels.png", picture("png"))
                .put("pixels.jpg", picture("jpg"));
        MarkupSeeds.write(resources);
    }

    private static byte[] picture(String kind) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(9, 5, BufferedImage.TYPE_INT_RGB), kind, bytes);
        return bytes.toByteArray();
    }
}
