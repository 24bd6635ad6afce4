package io.github.tapwright.report;

import java.util.List;
import java.util.Optional;

/**
 * What a report says, before the workshop's head and the day are put on it.
 *
 * @param title what it is about
 * @param lead the lines below the title
 * @param sections in order
 * @param pictures those its sections show
 * @param nothingUsable why nothing usable stands in it; empty if something does
 */
record Draft(
        String title, List<String> lead, List<Section> sections, Pictures pictures, Optional<String> nothingUsable) {

    Draft {
        lead = List.copyOf(lead);
        sections = List.copyOf(sections);
    }
}
