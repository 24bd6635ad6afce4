package io.github.tapwright.report;

import io.github.tapwright.report.xhtml.Node;
import java.util.List;

/**
 * A part of a report under a heading of its own.
 *
 * @param title the heading, which is also its bookmark
 * @param content what stands below it
 */
record Section(String title, List<Node> content) {

    Section {
        content = List.copyOf(content);
    }

    static Section of(String title, Node... content) {
        return new Section(title, List.of(content));
    }
}
