package io.github.tapwright.comparison.played;

import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.statistics.Interval;

/** What is compared of notes and plucks. */
public enum PlayedQuantity {
    /** The early decay time of notes, EDT of [ISO3382-1]. */
    EARLY_DECAY("early decay", "s", "%", Quantity.DECAY_TIME),
    /** The decay time of notes, T30 or else T20 of [ISO3382-1]. */
    DECAY_TIME("decay time", "s", "%", Quantity.DECAY_TIME),
    /** The largest A-weighted level, time weighting F. */
    LEVEL("level LAFmax", "dB", "dB", Quantity.LEVEL),
    /** The largest loudness of 400 ms by [BS1770]. */
    LOUDNESS("momentary loudness", "LUFS", "LU", Quantity.LEVEL),
    /** How far pitches lie apart; the player tunes, so that no question is asked of it. */
    PITCH("pitch", "cents", "cents", Quantity.FREQUENCY);

    private final String words;
    private final String figureUnit;
    private final String unit;
    private final Quantity quantity;

    PlayedQuantity(String words, String figureUnit, String unit, Quantity quantity) {
        this.words = words;
        this.figureUnit = figureUnit;
        this.unit = unit;
        this.quantity = quantity;
    }

    /**
     * The quantity as people read it.
     *
     * @return words
     */
    public String words() {
        return words;
    }

    /**
     * The unit of a figure.
     *
     * @return such as "s" or "dB"
     */
    public String figureUnit() {
        return figureUnit;
    }

    /**
     * The unit of a difference; of decay times the share of the first.
     *
     * @return such as "%" or "dB"
     */
    public String unit() {
        return unit;
    }

    /**
     * What kind of quantity it is, for conditions, hearing and setting up.
     *
     * @return its kind
     */
    public Quantity kind() {
        return quantity;
    }

    /**
     * What deviations on the scale of comparison are of.
     *
     * @return such as "natural logarithm" or "dB"
     */
    public String scale() {
        return isRatio() ? "natural logarithm" : unit;
    }

    boolean isJudged() {
        return this != PITCH;
    }

    boolean isRatio() {
        return quantity == Quantity.DECAY_TIME;
    }

    /** Decay times are compared by their logarithms: half and twice as long are equally far off. */
    double onScale(double figure) {
        return isRatio() ? Math.log(figure) : figure;
    }

    /** From the scale of comparison back to a figure. */
    double figure(double onScale) {
        return isRatio() ? Math.exp(onScale) : onScale;
    }

    /**
     * A difference in its unit.
     *
     * @param onScale on the scale of comparison: natural logarithm of a ratio, dB, LU, cents
     * @return per cent for ratios, else unchanged
     */
    public double inUnit(double onScale) {
        return isRatio() ? 100 * Math.expm1(onScale) : onScale;
    }

    /**
     * An interval in its unit.
     *
     * @param onScale on the scale of comparison
     * @return per cent for ratios, else unchanged
     */
    public Interval inUnit(Interval onScale) {
        return new Interval(inUnit(onScale.lower()), inUnit(onScale.upper()));
    }
}
