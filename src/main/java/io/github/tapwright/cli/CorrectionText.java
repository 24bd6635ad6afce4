package io.github.tapwright.cli;

import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.WrittenDown;
import java.time.ZoneId;
import java.util.List;

/** What was written down about a sitting before it was corrected, for people. */
final class CorrectionText {

    private CorrectionText() {}

    /** One line each; instrument and day only where they were others. */
    static List<String> lines(Sitting sitting, List<WrittenDown> corrected, ZoneId zone) {
        return corrected.stream()
                .map(before -> "before a correction: "
                        + (before.instrument().equals(sitting.instrument())
                                ? ""
                                : "instrument " + before.instrument() + "; ")
                        + (before.takenAt().equals(sitting.takenAt())
                                ? ""
                                : before.takenAt().text(zone) + "; ")
                        + ConditionsText.line(before.conditions()))
                .toList();
    }
}
