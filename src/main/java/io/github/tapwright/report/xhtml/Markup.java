package io.github.tapwright.report.xhtml;

import java.util.Set;

/** Writes a tree as XML that HTML readers understand too. */
public final class Markup {

    /** The only elements HTML lets end at once; any other keeps its closing tag even when it is empty. */
    private static final Set<String> VOID = Set.of("meta", "img");

    private Markup() {}

    /**
     * The document's text.
     *
     * @param root its root
     * @return with the doctype of HTML, ending in a line break
     */
    public static String document(Element root) {
        StringBuilder out = new StringBuilder("<!DOCTYPE html>\n");
        write(root, out);
        return out.append('\n').toString();
    }

    private static void write(Node node, StringBuilder out) {
        if (node instanceof Text text) {
            escape(text.text(), out);
        } else if (node instanceof Element element) {
            write(element, out);
        }
    }

    private static void write(Element element, StringBuilder out) {
        out.append('<').append(element.name());
        element.attributes().forEach((name, value) -> {
            out.append(' ').append(name).append("=\"");
            escape(value, out);
            out.append('"');
        });
        if (VOID.contains(element.name())) {
            out.append(" />");
            return;
        }
        out.append('>');
        element.children().forEach(child -> write(child, out));
        out.append("</").append(element.name()).append('>');
    }

    private static void escape(String text, StringBuilder out) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.append(c);
            }
        }
    }
}
