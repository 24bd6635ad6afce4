package io.github.tapwright.report;

import java.util.List;

/**
 * What a report says, before the workshop's head and the day are put on it.
 *
 * @param title what it is about
 * @param lead the lines below the title
 * @param sections in order
 * @param pictures those its sections show
 * @param usable whether anything usable was found
 */
record Draft(String title, List<String> lead, List<Section> sections, Pictures pictures, boolean usable) {

    Draft {
        lead = List.copyOf(lead);
        sections = List.copyOf(sections);
    }
}
