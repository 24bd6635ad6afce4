package io.github.tapwright.report;

import io.github.tapwright.chart.Lettering;
import io.github.tapwright.report.xhtml.Element;
import io.github.tapwright.report.xhtml.Node;
import io.github.tapwright.report.xhtml.Tag;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The one form of every report, on the screen and on paper. */
final class Template {

    /** The language reports are written in. */
    static final String LANGUAGE = "en";

    private static final String STYLE = "report.css";

    private Template() {}

    /** The document for a browser. */
    static Element forScreen(Report report) {
        return document(report, List.of());
    }

    /** The same document with bookmarks, and with the words for pictures where a writer of PDF looks for them. */
    static Element forPaper(Report report) {
        List<Node> bookmarks = new ArrayList<>();
        for (int i = 0; i < report.sections().size(); i++) {
            bookmarks.add(Element.of(Tag.BOOKMARK)
                    .with("name", report.sections().get(i).title())
                    .with("href", "#" + id(i)));
        }
        return withAlternatives(document(report, List.of(Element.of(Tag.BOOKMARKS, bookmarks))));
    }

    private static Element document(Report report, List<Node> more) {
        List<Node> head = new ArrayList<>(List.of(
                Element.of(Tag.META).with("charset", "utf-8"),
                Element.of(Tag.META).with("name", "viewport").with("content", "width=device-width, initial-scale=1"),
                Element.of(Tag.TITLE, report.title()),
                meta("author", author(report)),
                meta("description", String.join("; ", report.lead())),
                meta("subject", String.join("; ", report.lead())),
                Element.of(Tag.STYLE, style())));
        head.addAll(more);
        Element body = Element.of(Tag.BODY, footer(report), header(report), main(report));
        return new Element(
                        "html",
                        Map.of("xmlns", "http://www.w3.org/1999/xhtml"),
                        List.of(Element.of(Tag.HEAD, head), body))
                .with("lang", LANGUAGE);
    }

    static String author(Report report) {
        return report.head().name().orElse("Tapwright");
    }

    private static Element meta(String name, String content) {
        return Element.of(Tag.META).with("name", name).with("content", content);
    }

    private static Element header(Report report) {
        List<Node> words = new ArrayList<>();
        report.head().name().ifPresent(name -> words.add(Element.of(Tag.STRONG, name)));
        report.head().address().forEach(line -> words.add(Element.of(Tag.SPAN, line)));
        Element header = Element.of(Tag.HEADER).with("class", "shop");
        if (report.head().picture().isPresent()) {
            Element image = Element.of(Tag.IMG)
                    .with("src", report.head().picture().get().dataAddress())
                    .with("alt", report.head().name().orElse("the workshop's picture"));
            header = header.plus(Element.of(Tag.DIV, image).with("class", "emblem"));
        }
        return header.plus(Element.of(Tag.DIV, words).with("class", "address"));
    }

    /** The last two sections stay together on paper: a page that held the last alone, a few lines, would look forgotten. */
    private static Element main(Report report) {
        List<Node> content = new ArrayList<>();
        content.add(Element.of(Tag.H1, report.title()));
        report.lead().forEach(line -> content.add(Element.of(Tag.P, line).with("class", "lead")));
        List<Node> sections = sections(report);
        int ending = Math.max(0, sections.size() - 2);
        content.addAll(sections.subList(0, ending));
        content.add(
                Element.of(Tag.DIV, sections.subList(ending, sections.size())).with("class", "ending"));
        return Element.of(Tag.MAIN, content);
    }

    private static List<Node> sections(Report report) {
        List<Node> sections = new ArrayList<>();
        for (int i = 0; i < report.sections().size(); i++) {
            Section section = report.sections().get(i);
            List<Node> parts = new ArrayList<>();
            parts.add(Element.of(Tag.H2, section.title()));
            parts.addAll(section.content());
            sections.add(Element.of(Tag.SECTION, parts).with("id", id(i)));
        }
        return sections;
    }

    /** Stands first, because on paper it is lifted out of the text and put below every page. */
    private static Element footer(Report report) {
        String made = "Made on " + report.madeOn() + " with Tapwright";
        return Element.of(Tag.FOOTER, Element.of(Tag.SPAN, report.title() + ". " + made))
                .with("class", "foot");
    }

    /** Pictures keep their place and their words only: on paper they are drawn from the drawing itself. */
    private static Element withAlternatives(Element element) {
        List<Node> children = element.children().stream()
                .map(c -> c instanceof Element e ? withAlternatives(e) : c)
                .toList();
        String label = element.attributes().get("aria-label");
        return element.name().equals("svg") && label != null
                ? new Element("svg", element.attributes(), List.of()).with("alt", label)
                : new Element(element.name(), element.attributes(), children);
    }

    private static String id(int section) {
        return "section-" + (section + 1);
    }

    private static String style() {
        try (InputStream in = Template.class.getResourceAsStream(STYLE)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its resource " + STYLE);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .replace("${letters}", "'" + Lettering.FAMILY + "'");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
