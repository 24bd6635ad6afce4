package io.github.tapwright.comparison.group;

import io.github.tapwright.comparison.HearingThreshold;
import io.github.tapwright.comparison.InWords;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.statistics.Interval;
import java.util.OptionalInt;

/** A difference between groups as a sentence for people. */
public final class GroupWords {

    private GroupWords() {}

    /**
     * Which group is taken from which.
     *
     * @param d one of the pair's differences
     * @return such as "honeycomb-core sandwich tops (second) less solid tops (first)"
     */
    public static String pair(GroupDifference d) {
        return d.second().group() + " (second) less " + d.first().group() + " (first)";
    }

    /**
     * One sentence.
     *
     * @param d the difference
     * @param questions how many were asked at once
     * @return such as "honeycomb-core sandwich tops have a main top 6.1 Hz higher (1.0 to 11.2) than solid tops, 4 against 3 instruments;
     *     corrected for 11 questions asked at once p = 0.04"
     */
    public static String sentence(GroupDifference d, int questions) {
        return d.evidence().map(e -> judged(d, e, questions)).orElseGet(() -> tooFew(d));
    }

    private static String judged(GroupDifference d, Evidence e, int questions) {
        if (e.differs()) {
            return have(d, e) + "; " + corrected(e, questions);
        }
        return e.difference().differsFromZero() ? perhaps(d, e) : cannotTell(d, e, questions);
    }

    /** The whole interval lies on one side of zero; only the allowance for many questions keeps it from being told. */
    private static String perhaps(GroupDifference d, Evidence e) {
        boolean small = Math.abs(e.difference().value()) < e.worthSeeing();
        return "perhaps " + have(d, e) + ": " + InWords.doubt(e.probability(), e.adjustedProbability())
                + (small ? further(d.subject().quantity(), e.furtherInEachGroup()) : "");
    }

    private static String tooFew(GroupDifference d) {
        return d.subject().words() + ": " + d.second().count() + " "
                + d.second().group() + " against "
                + d.first().count() + " " + d.first().group() + " are too few to say anything; measure "
                + GroupFigures.FEWEST + " of each at least";
    }

    private static String have(GroupDifference d, Evidence e) {
        boolean more = e.difference().value() > 0;
        Interval i = e.interval95();
        Interval size = more ? i : i.negated();
        return d.second().group() + " have "
                + what(d, Figures.size(e.difference().value(), e.difference().halfWidth95()), more) + " ("
                + Figures.interval(size) + ") than " + d.first().group() + ", " + against(d);
    }

    private static String what(GroupDifference d, String amount, boolean more) {
        String whose = d.subject().whose();
        return switch (d.subject().quantity()) {
            case FREQUENCY -> "a " + whose + " " + amount + " Hz " + (more ? "higher" : "lower");
            case Q -> "a Q of the " + whose + " " + amount + (more ? " greater" : " smaller");
            case DECAY_TIME -> "a " + whose + " that rings " + amount + " s " + (more ? "longer" : "shorter");
            case LEVEL -> whose + " " + amount + " dB " + (more ? "louder" : "softer");
        };
    }

    private static String cannotTell(GroupDifference d, Evidence e, int questions) {
        String unit = d.subject().quantity().unit();
        return "cannot tell: " + d.subject().words() + " of " + d.second().group() + " less that of "
                + d.first().group() + " may be anything from " + Figures.interval(e.interval95())
                + (unit.isEmpty() ? "" : " " + unit) + ", " + against(d) + "; " + corrected(e, questions)
                + further(d.subject().quantity(), e.furtherInEachGroup());
    }

    private static String against(GroupDifference d) {
        return d.second().count() + " against " + d.first().count() + " instruments";
    }

    private static String corrected(Evidence e, int questions) {
        return "after correction for " + Figures.count(questions, "question") + " asked at once p "
                + Figures.probabilityAfterP(e.adjustedProbability());
    }

    private static String further(Quantity quantity, OptionalInt further) {
        if (further.isEmpty()) {
            return "";
        }
        String size = "a difference of " + worth(quantity);
        int n = further.getAsInt();
        return n == 0
                ? "; " + size + " would have shown four times in five"
                : "; " + n + " more in each group would show " + size + " four times in five";
    }

    /**
     * The difference worth seeing.
     *
     * @param quantity of what
     * @return such as "1 %" or "1 dB"
     */
    public static String worth(Quantity quantity) {
        double size = HearingThreshold.of(quantity).size();
        return quantity == Quantity.LEVEL
                ? Figures.plain(size) + " dB"
                : Figures.plain(Math.round(1000 * size) / 10.0) + " %";
    }
}
