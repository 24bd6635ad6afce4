package io.github.tapwright.report;

import io.github.tapwright.report.xhtml.Element;
import io.github.tapwright.report.xhtml.Tag;
import java.util.List;
import java.util.Optional;

/** Paragraphs, lists and pairs of a report. */
final class Words {

    static final String UNKNOWN = "not written down";

    private Words() {}

    static Element paragraph(String text) {
        return Element.of(Tag.P, text);
    }

    static Element quiet(String text) {
        return Element.of(Tag.P, text).with("class", "quiet");
    }

    static Element list(List<String> lines) {
        return Element.of(
                Tag.UL, lines.stream().map(line -> Element.of(Tag.LI, line)).toList());
    }

    /** Names to the left, what is known to the right. */
    static final class Pairs {

        private Element table = Element.of(Tag.TBODY);

        Pairs add(String name, Optional<String> words) {
            Element value = words.map(w -> Element.of(Tag.TD, w))
                    .orElseGet(() -> Element.of(Tag.TD, UNKNOWN).with("class", "quiet"));
            table = table.plus(Element.of(Tag.TR, Element.of(Tag.TH, name).with("scope", "row"), value));
            return this;
        }

        Pairs add(String name, String words) {
            return add(name, Optional.of(words));
        }

        Element element() {
            return Element.of(Tag.TABLE, table).with("class", "pairs");
        }
    }
}
