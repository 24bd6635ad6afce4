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
        return Words.list(
                List.of(
                        "A string under tension can break and whip. Protect your eyes, and those near, when tapping, plucking or tuning.",
                        "Tap lightly, with a knuckle or a soft tip, and never on finish that is still soft.",
                        "Play recordings back quietly at first. Loud sound harms hearing; local rules say how loud is allowed.",
                        "For finishes, solvents and electrics follow local rules; where a licence is asked, leave it to those who hold one."));
    }
}
