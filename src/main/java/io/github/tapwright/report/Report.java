package io.github.tapwright.report;

import java.time.Instant;
import java.util.List;

/**
 * A report before it has a form: words, tables and pictures in order.
 *
 * @param title what it is about
 * @param lead the lines below the title
 * @param sections in order
 * @param pictures those its sections show
 * @param head what the workshop says of itself
 * @param madeAt the time it carries
 * @param madeOn the same as the reader sees it
 */
record Report(
        String title,
        List<String> lead,
        List<Section> sections,
        Pictures pictures,
        ShopHead head,
        Instant madeAt,
        String madeOn) {

    Report {
        lead = List.copyOf(lead);
        sections = List.copyOf(sections);
    }
}
