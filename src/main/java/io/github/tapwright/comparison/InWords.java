package io.github.tapwright.comparison;

import io.github.tapwright.statistics.Figures;
import io.github.tapwright.statistics.Interval;
import java.util.stream.Collectors;

/** A difference as a sentence for people: how much, how sure, whether more than chance, whether it can be heard. */
public final class InWords {

    /** What stands for the level of a resonance that serves as 0 dB. */
    public static final String ZERO_LEVEL = "0 by definition";

    private InWords() {}

    /**
     * One sentence.
     *
     * @param what whose difference, such as "main top"
     * @param difference the difference
     * @param spread what setting up again does on this bench
     * @return such as "main top is 3.1 Hz higher (1.9 to 4.3): more than setting up again explains (measured on this bench); about 1.6 %,
     *     above what listeners notice in published tests"
     */
    public static String sentence(String what, Difference difference, SetUpSpread spread) {
        return switch (difference.verdict()) {
            case REFUSED -> what + ", " + difference.quantity().words() + ": not compared, the conditions forbid it";
            case CANNOT_TELL ->
                what + ", " + difference.quantity().words() + ": cannot tell, the difference may be anything from "
                        + withUnit(Figures.interval(difference.interval95()), difference.quantity());
            case DIFFERS ->
                what + " " + size(difference) + ": more than fits, strikes and setting up again explain ("
                        + spread.known(difference.quantity()).basis().words() + ")" + more(difference);
            case DIFFERS_ALONE ->
                "perhaps " + what + " " + size(difference) + ": "
                        + doubt(difference.probability(), difference.adjustedProbability()) + more(difference);
        };
    }

    /**
     * What differs in a few words, for readers who do not want the evidence in every line.
     *
     * @param difference one that differs
     * @return such as "is 3.1 Hz higher (1.9 to 4.3), above what listeners notice"
     */
    public static String brief(Difference difference) {
        return size(difference) + ", " + difference.audibility().words();
    }

    /** How much, and where the true difference lies. */
    private static String size(Difference difference) {
        boolean more = difference.estimate().value() > 0;
        Interval i = difference.interval95();
        return verb(
                        difference.quantity(),
                        more,
                        Figures.size(
                                difference.estimate().value(),
                                difference.estimate().halfWidth95()))
                + " (" + Figures.interval(more ? i : i.negated()) + ")";
    }

    /**
     * Why a difference is only perhaps one.
     *
     * @param probability of it by chance, asked alone
     * @param adjusted the same with all questions considered
     * @return words that follow a colon
     */
    public static String doubt(double probability, double adjusted) {
        return "convincing if it were the only question (p " + Figures.probabilityAfterP(probability)
                + "), not with all that were asked at once (p " + Figures.probabilityAfterP(adjusted) + ")";
    }

    private static String more(Difference difference) {
        return share(difference) + ", " + difference.audibility().words() + " in published tests"
                + measured(difference);
    }

    /** Whoever reads a corrected figure must see how much of it is the correction. */
    private static String measured(Difference difference) {
        return difference
                .correction()
                .map(c -> "; " + Figures.difference(difference.asMeasured(), 2) + " "
                        + difference.quantity().unit()
                        + " as measured, the rest is the correction for "
                        + c.parts().stream()
                                .map(p -> p.cause() + " (" + p.basis() + ")")
                                .collect(Collectors.joining(" and ")))
                .orElse("");
    }

    private static String verb(Quantity quantity, boolean more, String amount) {
        return switch (quantity) {
            case FREQUENCY -> "is " + amount + " Hz " + (more ? "higher" : "lower");
            case Q -> "has a Q " + amount + (more ? " greater" : " smaller");
            case DECAY_TIME -> "rings " + amount + " s " + (more ? "longer" : "shorter");
            case LEVEL -> "is " + amount + " dB " + (more ? "louder" : "softer");
        };
    }

    private static String share(Difference difference) {
        if (difference.quantity() == Quantity.LEVEL) {
            return "";
        }
        double percent = 100
                * Math.abs(difference.estimate().value() / difference.first().value());
        return "; about " + Figures.text(percent, percent < 10 ? 1 : 0) + " %";
    }

    private static String withUnit(String interval, Quantity quantity) {
        return quantity.unit().isEmpty() ? interval : interval + " " + quantity.unit();
    }

    /**
     * How many questions a comparison asks at once.
     *
     * @param comparison which
     * @return such as "26 questions asked at once, the frequencies of main air, main top and main back weigh most"
     */
    public static String asked(SittingComparison comparison) {
        return Figures.count(comparison.questions(), "question") + " asked at once"
                + (AskedAtOnce.weighsUnlike(comparison.changes())
                        ? ", the frequencies of main air, main top and main back weigh most"
                        : "");
    }

    /**
     * One resonance found again, as a line of a table.
     *
     * @param change what became of it
     * @return frequency of A, of B and their difference as measured; differences of frequency, Q, decay time and level with half their 95 %
     *     intervals; the name
     */
    public static String[] row(ResonanceChange change) {
        return new String[] {
            Figures.text(change.first().frequencyHz().value(), 2),
            Figures.text(change.second().frequencyHz().value(), 2),
            Figures.difference(change.frequencyHz().asMeasured(), 2),
            cell(change.frequencyHz()),
            cell(change.q()),
            cell(change.decayTimeSeconds()),
            change.levelDb().map(InWords::cell).orElse(ZERO_LEVEL),
            change.name().orElse("no name")
        };
    }

    private static String cell(Difference d) {
        return d.shown() ? Figures.difference(d.estimate()) : "refused";
    }
}
