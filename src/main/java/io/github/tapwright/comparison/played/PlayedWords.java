package io.github.tapwright.comparison.played;

import io.github.tapwright.comparison.InWords;
import io.github.tapwright.comparison.KnownScatter;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.statistics.Interval;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What was played in two sittings as sentences for people. */
public final class PlayedWords {

    /** Nobody hears, plays or tunes more finely, in per cent, dB or cents. */
    private static final double FINEST = 0.1;

    /** What is said where there is nothing to compare. */
    public static final String NOTHING = "Nothing was played at the same place in both.";

    /** What the mean of decay times is. */
    public static final String GEOMETRIC =
            "Means of decay times are geometric, as twice and half as long are equally far off.";

    private static final String NONE = "–";

    private PlayedWords() {}

    /**
     * One sentence.
     *
     * @param change one quantity over all strings
     * @return such as "the early decay of notes is 21 % longer (3 to 42): more than the notes, setting up and playing again explain
     *     (assumed, not measured on this bench), perhaps at the limit of what listeners notice in published tests"
     */
    public static String sentence(PlayedChange change) {
        String what = whose(change.quantity());
        if (!change.isJudged()) {
            return what + ": not judged, the player tunes";
        }
        if (change.overall().isEmpty()) {
            return what + ": too little was played in both to tell anything";
        }
        return switch (change.verdict()) {
            case REFUSED -> what + ": not compared, the conditions forbid it";
            case CANNOT_TELL ->
                what + ": cannot tell, the difference may be anything from " + Figures.interval(interval(change)) + " "
                        + change.quantity().unit();
            case DIFFERS ->
                what + " is " + size(change) + ": more than what was played, setting up and playing again explain ("
                        + change.again().basis().words() + ")" + heard(change);
            case DIFFERS_ALONE ->
                "perhaps " + what + " is " + size(change) + ": "
                        + InWords.doubt(change.probability(), change.adjustedProbability()) + heard(change);
        };
    }

    private static Interval interval(PlayedChange change) {
        return change.interval95().orElseThrow();
    }

    private static String whose(PlayedQuantity quantity) {
        return switch (quantity) {
            case EARLY_DECAY, DECAY_TIME -> "the " + quantity.words() + " of notes";
            case LEVEL, LOUDNESS, PITCH -> "the " + quantity.words();
        };
    }

    private static String size(PlayedChange change) {
        PlayedQuantity quantity = change.quantity();
        Interval i = interval(change);
        boolean more = i.lower() > 0;
        Interval size = more ? i : i.negated();
        double value = quantity.inUnit(change.estimate().orElseThrow().value());
        return Figures.size(value, size.width() / 2) + " " + quantity.unit() + " " + direction(quantity, more) + " ("
                + Figures.interval(size) + ")";
    }

    private static String direction(PlayedQuantity quantity, boolean more) {
        return switch (quantity) {
            case EARLY_DECAY, DECAY_TIME -> more ? "longer" : "shorter";
            case LEVEL, LOUDNESS -> more ? "higher" : "lower";
            case PITCH -> more ? "sharper" : "flatter";
        };
    }

    private static String heard(PlayedChange change) {
        return change.audibility()
                .map(a -> ", " + a.words() + " in published tests")
                .orElse("");
    }

    /**
     * What the interval over all strings has in it besides the notes.
     *
     * @param changes what was compared
     * @return words that follow "setting up and playing again included: that moves", such as "decay times by 5 % and levels by 1 dB (assumed,
     *     not measured on this bench)"; each basis for itself
     */
    public static String again(List<PlayedChange> changes) {
        Map<PlayedQuantity, KnownScatter> known = new EnumMap<>(PlayedQuantity.class);
        changes.stream().filter(PlayedChange::isJudged).forEach(c -> known.put(c.quantity(), c.again()));
        return AgainWords.of(known);
    }

    /**
     * One string's difference in the unit of its quantity, with half the 95 % interval.
     *
     * @param quantity what is compared
     * @param difference on the scale of comparison
     * @return such as "+21 ± 19"; never finer than a tenth; of ratios half the width between the interval's ends
     */
    public static String difference(PlayedQuantity quantity, Estimate difference) {
        return Figures.difference(
                quantity.inUnit(difference.value()),
                interval(quantity, difference).width() / 2);
    }

    /**
     * Where a difference lies; recordings that are alike to the last bit know it no better than a tenth.
     *
     * @param quantity what is compared
     * @param difference on the scale of comparison
     * @return its 95 % interval in the unit of the quantity
     */
    public static Interval interval(PlayedQuantity quantity, Estimate difference) {
        Interval i = quantity.inUnit(difference.interval95());
        double value = quantity.inUnit(difference.value());
        return i.width() < 2 * FINEST ? new Interval(value - FINEST, value + FINEST) : i;
    }

    /**
     * One string's difference in a table.
     *
     * @param change the quantity it is of
     * @param string which
     * @return such as "+21 ± 19"; that it is refused; or a dash where nothing tells how far it scatters
     */
    public static String difference(PlayedChange change, OnString string) {
        return change.shown()
                ? string.difference().map(d -> difference(change.quantity(), d)).orElse(NONE)
                : "refused";
    }

    /**
     * A figure of one sitting, as finely as anyone reads it.
     *
     * @param quantity what it is a figure of
     * @param figure in its unit
     * @return such as "2.31"
     */
    public static String figure(PlayedQuantity quantity, double figure) {
        return Figures.text(figure, quantity.kind() == Quantity.DECAY_TIME ? 2 : 1);
    }

    /**
     * A standard deviation in the unit of differences.
     *
     * @param quantity what scatters
     * @param deviation on the scale of comparison
     * @return of decay times per cent, which for a few per cent is a hundred times that of the logarithm
     */
    public static double spread(PlayedQuantity quantity, double deviation) {
        return quantity.kind() == Quantity.DECAY_TIME ? 100 * deviation : deviation;
    }

    /**
     * What stands over a table of one quantity, string by string.
     *
     * @param quantity what is compared
     * @return one heading for each cell of {@link #row}
     */
    public static String[] headings(PlayedQuantity quantity) {
        String figure = " (" + quantity.figureUnit() + ")";
        return new String[] {
            "string", "in A", "in B", "mean of A" + figure, "mean of B" + figure, "B minus A (" + quantity.unit() + ")"
        };
    }

    /**
     * One string as a line of a table.
     *
     * @param change the quantity it is of
     * @param string which
     * @return the string, how many were played in A and B, both means, the difference
     */
    public static String[] row(PlayedChange change, OnString string) {
        return new String[] {
            Integer.toString(string.string()),
            Integer.toString(string.firstCount()),
            Integer.toString(string.secondCount()),
            figure(change.quantity(), string.first()),
            figure(change.quantity(), string.second()),
            difference(change, string)
        };
    }
}
