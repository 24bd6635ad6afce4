package io.github.tapwright.report;

import io.github.tapwright.report.xhtml.Element;
import io.github.tapwright.report.xhtml.Node;
import io.github.tapwright.report.xhtml.Tag;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** A table, built up row by row. */
final class Grid {

    private final List<Column> columns;
    private final List<Node> rows = new ArrayList<>();

    private Grid(List<Column> columns) {
        this.columns = columns;
    }

    /** A column under its heading; figures stand to the right, words to the left. */
    private record Column(String heading, boolean figures) {}

    /** Columns by their headings; one that ends in a bar | holds words, any other figures. */
    static Grid of(String... headings) {
        return new Grid(Arrays.stream(headings)
                .map(h -> new Column(h.replace("|", ""), !h.endsWith("|")))
                .toList());
    }

    void add(String... cells) {
        if (cells.length != columns.size()) {
            throw new IllegalArgumentException("a row of " + cells.length + " under " + columns.size() + " headings");
        }
        rows.add(Element.of(
                Tag.TR,
                IntStream.range(0, cells.length)
                        .mapToObj(i -> dressed(Element.of(Tag.TD, cells[i]), columns.get(i)))
                        .toList()));
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    Element element() {
        Element head = Element.of(
                Tag.TR,
                columns.stream()
                        .map(c -> dressed(Element.of(Tag.TH, c.heading), c).with("scope", "col"))
                        .toList());
        Element table = Element.of(Tag.TABLE, Element.of(Tag.THEAD, head), Element.of(Tag.TBODY, rows));
        return Element.of(Tag.DIV, table).with("class", "wide");
    }

    private static Element dressed(Element cell, Column column) {
        return column.figures ? cell.with("class", "figure") : cell;
    }
}
