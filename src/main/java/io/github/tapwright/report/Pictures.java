package io.github.tapwright.report;

import io.github.tapwright.chart.PagePicture;
import io.github.tapwright.chart.Picture;
import io.github.tapwright.report.xhtml.Element;
import io.github.tapwright.report.xhtml.SvgReader;
import io.github.tapwright.report.xhtml.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The pictures of one report: drawn as SVG where the report is read on a screen, by the same hand on paper. */
final class Pictures {

    private static final String PREFIX = "picture-";

    private final List<PagePicture> all = new ArrayList<>();

    /** A picture with the words that say what it shows. */
    Element figure(Picture picture, String alternative, String caption) {
        PagePicture page = PagePicture.of(picture);
        all.add(page);
        String id = PREFIX + all.size();
        return Element.of(Tag.FIGURE, svg(page, id, alternative), Element.of(Tag.FIGCAPTION, caption));
    }

    private static Element svg(PagePicture page, String id, String alternative) {
        try {
            return SvgReader.read(page.svg(id + "-"))
                    .with("id", id)
                    .with("role", "img")
                    .with("aria-label", alternative)
                    .with("width", Integer.toString(page.width()))
                    .with("height", Integer.toString(page.height()))
                    .with("viewBox", String.format(Locale.ROOT, "0 0 %d %d", page.width(), page.height()));
        } catch (SvgReader.NoSvgException e) {
            throw new IllegalStateException("the program's own pictures are well-formed", e);
        }
    }

    /** The picture with an identifier; empty if this report has none such. */
    Optional<PagePicture> find(String id) {
        return id.matches(PREFIX + "[0-9]{1,4}")
                ? Optional.of(Integer.parseInt(id.substring(PREFIX.length())) - 1)
                        .filter(i -> i >= 0 && i < all.size())
                        .map(all::get)
                : Optional.empty();
    }
}
