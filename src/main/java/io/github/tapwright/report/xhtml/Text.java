package io.github.tapwright.report.xhtml;

/**
 * Text as somebody typed it; it is escaped when the document is written.
 *
 * @param text any characters; those no XML document may hold become the replacement character U+FFFD
 */
public record Text(String text) implements Node {

    private static final int REPLACEMENT = 0xFFFD;

    /** Takes out what no XML document may hold: control characters and halves of surrogate pairs. */
    public Text {
        text = cleaned(text);
    }

    static String cleaned(String text) {
        return text.codePoints()
                .map(c -> allowed(c) ? c : REPLACEMENT)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    /** Char of the XML 1.0 recommendation, 2.2. */
    private static boolean allowed(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || (c >= 0x20 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || (c >= 0x10000 && c <= 0x10FFFF);
    }
}
