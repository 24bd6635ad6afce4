package io.github.tapwright.report.xhtml;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import io.github.tapwright.fuzz.Bounds;
import io.github.tapwright.fuzz.TypedText;
import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** Any text in a report, as text and as an attribute: it comes out of the document as it went in, and nothing else does. */
class MarkupFuzzTest {

    private static final Bounds BOUNDS = Bounds.refusingWith(List.of());

    @FuzzTest
    void textStaysText(byte[] bytes) {
        String text = TypedText.of(bytes);
        BOUNDS.hold(bytes.length, () -> {
            Document read = read(
                    Markup.document(Element.of(Tag.HTML, Element.of(Tag.P, text).with("title", text))));
            org.w3c.dom.Element paragraph =
                    (org.w3c.dom.Element) read.getElementsByTagName("*").item(1);

            assertThat(read.getElementsByTagName("*").getLength()).isEqualTo(2);
            assertThat(paragraph.getAttributes().getLength()).isOne();
            assertThat(paragraph.getTextContent()).isEqualTo(lines(Text.cleaned(text)));
            assertThat(paragraph.getAttribute("title"))
                    .isEqualTo(lines(Text.cleaned(text)).replaceAll("[\n\t]", " "));
        });
    }

    private static Document read(String markup) throws Exception {
        return DocumentBuilderFactory.newDefaultInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(markup)));
    }

    /** XML 1.0, 2.11: every kind of line end is read as one. */
    private static String lines(String text) {
        return text.replace("\r\n", "\n").replace('\r', '\n');
    }
}
