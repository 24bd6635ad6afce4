package io.github.tapwright.desktop.shelf;

import io.github.tapwright.desktop.work.Notices;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Something written down about an instrument or a sitting.
 *
 * @param name such as "relative humidity"
 * @param words such as "46 %"; empty if nothing is written down
 */
record Written(String name, Optional<String> words) {

    private static final int MOST = 4;
    private static final int LONGEST = 40;

    /**
     * What a correction changes, each such as "gain 30 dB (was not written down)" or "operator taken back (was Ann)".
     *
     * @param before everything as it was
     * @param after the same in the same order, as it shall be
     * @return empty if nothing changes
     */
    static List<String> changes(List<Written> before, List<Written> after) {
        return IntStream.range(0, after.size())
                .filter(i -> !after.get(i).equals(before.get(i)))
                .mapToObj(i -> after.get(i).insteadOf(before.get(i)))
                .toList();
    }

    /** The first few changes in a line. "And 1 more" would take as much room as that one. */
    static String inShort(List<String> changes) {
        boolean tooMany = changes.size() > MOST + 1;
        return Stream.concat(
                        changes.stream().limit(tooMany ? MOST : changes.size()),
                        Stream.of("and " + (changes.size() - MOST) + " more").filter(words -> tooMany))
                .collect(Collectors.joining("; "));
    }

    /** What would change, before it does. */
    static String preview(List<String> changes) {
        return changes.isEmpty() ? "Nothing is changed yet." : "Will change: " + String.join("; ", changes) + ".";
    }

    /**
     * Tells what taking a correction back came to.
     *
     * @param what whose
     * @param changed whether anything was set back
     * @param stays whether anything was corrected again since, which stays
     */
    static void takenBack(Notices notices, String what, boolean changed, boolean stays) {
        if (!changed && stays) {
            notices.trouble(what + " stays as it is: corrected again since");
        } else {
            notices.say(what + " is written down as it was before"
                    + (stays ? ", but for what was corrected again since: that stays" : ""));
        }
    }

    private String insteadOf(Written before) {
        return name + " " + words.map(Written::shortened).orElse("taken back") + " (was "
                + before.words.map(Written::shortened).orElse("not written down") + ")";
    }

    private static String shortened(String words) {
        String line = words.replaceAll("\\s+", " ");
        return line.length() <= LONGEST ? line : line.substring(0, LONGEST - 1).strip() + "…";
    }
}
