package io.github.tapwright.report;

import io.github.tapwright.report.xhtml.Node;
import io.github.tapwright.sitting.ConditionLine;
import io.github.tapwright.sitting.Conditions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The conditions a sitting took place in, because they move every figure. */
final class RoomAndSetUp {

    /** A note of any length would push a client's report off its second page. */
    private static final int LONGEST_FOR_A_CLIENT = 240;

    private RoomAndSetUp() {}

    /** What was written down in one paragraph, what was not in the next. */
    static Section inBrief(Conditions conditions) {
        String known = ConditionLine.of(conditions).stream()
                .flatMap(c -> c.spoken().stream().map(RoomAndSetUp::brief))
                .collect(Collectors.joining("; "));
        List<Node> words = new ArrayList<>();
        words.add(Words.paragraph(
                known.isEmpty() ? "Nothing was written down about room and set-up." : "On that day: " + known + "."));
        List<String> unknown = conditions.unknown();
        if (!unknown.isEmpty()) {
            words.add(Words.quiet("Not written down: " + String.join(", ", unknown) + "."));
        }
        words.add(Words.quiet(
                "Wood takes up water from the air and lets it go: in other air, at another stage or with other strings the"
                        + " same guitar gives other figures."));
        return new Section("Room and set-up", words);
    }

    /** Every condition on a line of its own. */
    static Section inFull(String title, Conditions conditions) {
        Words.Pairs pairs = new Words.Pairs();
        for (ConditionLine c : ConditionLine.of(conditions)) {
            boolean noneIsKnown = c.name().equals("added mass") || c.name().equals("note");
            pairs.add(c.name(), noneIsKnown ? Optional.of(c.words().orElse("none")) : c.words());
        }
        return Section.of(title, pairs.element());
    }

    private static String brief(String words) {
        String line = words.replaceAll("\\s+", " ");
        if (line.length() <= LONGEST_FOR_A_CLIENT) {
            return line;
        }
        int end = line.offsetByCodePoints(0, Math.min(LONGEST_FOR_A_CLIENT, line.codePointCount(0, line.length())));
        return line.substring(0, end) + "…";
    }
}
