package io.github.tapwright.desktop.compare;

import io.github.tapwright.comparison.Difference;
import io.github.tapwright.comparison.Difference.Verdict;
import io.github.tapwright.comparison.InWords;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.ResonanceChange;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.played.OnString;
import io.github.tapwright.comparison.played.PlayedChange;
import io.github.tapwright.comparison.played.PlayedWords;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;
import java.util.Optional;

/**
 * One figure in both sittings, as the table shows it.
 *
 * @param what a resonance or a string
 * @param quantity with its unit, unless the figures have it
 * @param first in A
 * @param second in B
 * @param change95 second less first with half the 95 % interval, or that it is refused
 * @param told what one may say; empty for a single string, of which nobody asked
 * @param sentence the same in plain words
 */
public record ComparedFigure(
        String what,
        String quantity,
        String first,
        String second,
        String change95,
        Optional<Verdict> told,
        String sentence) {

    static ComparedFigure of(ResonanceChange change, Difference difference, SetUpSpread spread) {
        Quantity quantity = difference.quantity();
        return new ComparedFigure(
                change.called(),
                quantity.words() + (quantity.unit().isEmpty() ? "" : " (" + quantity.unit() + ")"),
                figure(quantity, difference.first()),
                figure(quantity, difference.second()),
                difference.shown() ? Figures.difference(difference.estimate()) : "refused",
                Optional.of(difference.verdict()),
                InWords.sentence(change.called(), difference, spread));
    }

    /** No finer than anyone reads a figure, however sharp the fit. */
    private static String figure(Quantity quantity, Estimate estimate) {
        return Figures.text(estimate, quantity == Quantity.DECAY_TIME ? 3 : 2);
    }

    static ComparedFigure of(PlayedChange change) {
        return new ComparedFigure(
                "all strings",
                change.quantity().words(),
                "",
                "",
                change95(change, change.estimate()),
                Optional.of(change.verdict()).filter(v -> change.isJudged()),
                PlayedWords.sentence(change));
    }

    static ComparedFigure of(PlayedChange change, OnString string) {
        return new ComparedFigure(
                "string " + string.string(),
                change.quantity().words(),
                PlayedWords.figure(change.quantity(), string.first()) + " "
                        + change.quantity().figureUnit(),
                PlayedWords.figure(change.quantity(), string.second()) + " "
                        + change.quantity().figureUnit(),
                change95(change, string.difference()),
                Optional.empty(),
                string.firstCount() + " in A and " + string.secondCount()
                        + " in B; the interval is of what was played on these days, setting up and playing again not in it");
    }

    private static String change95(PlayedChange change, Optional<Estimate> difference) {
        return change.shown()
                ? difference
                        .map(d -> PlayedWords.difference(change.quantity(), d) + " "
                                + change.quantity().unit())
                        .orElse("–")
                : "refused";
    }

    /**
     * The verdict, with a sign of its own.
     *
     * @return a sign and words; empty for a single string
     */
    public String verdict() {
        return told.map(v -> switch (v) {
                    case DIFFERS -> "≠ differs";
                    case DIFFERS_ALONE -> "≈ perhaps";
                    case CANNOT_TELL -> "? cannot tell";
                    case REFUSED -> "✕ refused";
                })
                .orElse("");
    }
}
