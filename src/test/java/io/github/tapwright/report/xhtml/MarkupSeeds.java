package io.github.tapwright.report.xhtml;

import io.github.tapwright.fuzz.SeedFolder;
import java.io.IOException;
import java.nio.file.Path;

/** Seeds of texts in a report. */
public final class MarkupSeeds {

    private MarkupSeeds() {}

    public static void write(Path resources) throws IOException {
        new SeedFolder(resources, MarkupFuzzTest.class, "textStaysText")
                .put("script", "<script>alert(1)</script>")
                .put("attribute", "\"><img src=x onerror=\"alert(1)\">")
                .put("data-end", "]]>")
                .put("comment", "<!-- --> <?php ?>")
                .put("entity", "&amp;&#0;&#x1F;&lt;")
                .put("controls", "a\\u0000\\u0001\\u001F\\u007F\\u0085\\u2028b")
                .put("right-to-left", "\\u202Eevil\\u2066\\u200F")
                .put("half-a-pair", "\\uD800 \\uDC00 \\uDFFF\\uD83C")
                .put("no-characters", "\\uFFFE\\uFFFF\\uFEFF")
                .put("line-ends", "a\r\nb\rc\nd\te");
    }
}
