package io.github.tapwright.desktop.compare;

import io.github.tapwright.comparison.Difference;
import io.github.tapwright.comparison.InWords;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.ResonanceChange;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;

/**
 * One figure of one resonance in both sittings, as the table shows it.
 *
 * @param change of which resonance
 * @param difference the figure
 * @param spread how far setting up again moves it
 */
public record ComparedFigure(ResonanceChange change, Difference difference, SetUpSpread spread) {

    /**
     * What the resonance is called.
     *
     * @return its name, or where it lies
     */
    public String resonance() {
        return name(change);
    }

    static String name(ResonanceChange change) {
        return change.name()
                .orElse("the resonance at "
                        + Figures.text(change.first().frequencyHz().value(), 0) + " Hz");
    }

    String quantity() {
        Quantity quantity = difference.quantity();
        return quantity.words() + (quantity.unit().isEmpty() ? "" : " (" + quantity.unit() + ")");
    }

    String first() {
        return figure(difference.first());
    }

    String second() {
        return figure(difference.second());
    }

    /** No finer than anyone reads a figure, however sharp the fit. */
    private String figure(Estimate estimate) {
        return Figures.text(estimate, difference.quantity() == Quantity.DECAY_TIME ? 3 : 2);
    }

    /**
     * Second less first, in the air of the first, with half the 95 % interval.
     *
     * @return the figure, or that it is refused
     */
    public String change95() {
        return difference.shown() ? Figures.difference(difference.estimate()) : "refused";
    }

    /**
     * The verdict, with a sign of its own.
     *
     * @return a sign and words
     */
    public String verdict() {
        return switch (difference.verdict()) {
            case DIFFERS -> "≠ differs";
            case DIFFERS_ALONE -> "≈ perhaps";
            case CANNOT_TELL -> "? cannot tell";
            case REFUSED -> "✕ refused";
        };
    }

    /**
     * The verdict in a plain sentence.
     *
     * @return what differs by how much, or that it cannot be told
     */
    public String sentence() {
        return InWords.sentence(resonance(), difference, spread);
    }
}
