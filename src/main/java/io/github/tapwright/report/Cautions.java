package io.github.tapwright.report;

import io.github.tapwright.report.xhtml.Element;
import java.util.List;

/** What may hurt when somebody repeats what a report tells of. */
final class Cautions {

    private Cautions() {}

    static Section section() {
        return Section.of("Cautions", list());
    }

    private static Element list() {
        return Words.list(List.of(
                "A string under tension can break and whip. Wear eye protection when you tap, pluck or tune, and keep other faces away.",
                "Tap lightly, with a knuckle or a soft tip, and never on bare finish that is still soft: the body must not carry marks.",
                "Play recordings back quietly at first. Loud sound harms hearing; local rules say how loud and how long.",
                "Work on finishes, solvents or electrics follows local rules, and is for those licensed for it where a licence is asked."));
    }
}
