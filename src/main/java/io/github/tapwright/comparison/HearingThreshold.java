package io.github.tapwright.comparison;

import io.github.tapwright.statistics.Interval;

/**
 * The smallest difference that listeners notice, for each quantity.
 *
 * <p>Body modes, all shifted together, best listeners: 1 % of frequency and 20 % of Q [Woodhouse2012], both numbers from memory, to be
 * verified in the paper. Decay time of a plucked tone: changes between −25 % and +40 % pass unheard [TolonenJarvelainen2000]; the
 * smaller is taken. Level of two recordings: 1 dB, from memory, to be verified [ZwickerFastl1999]. A single resonance that moves alone is harder to
 * hear than all together.
 *
 * @param quantity what it is for
 * @param size as a share of the figure, or in dB for levels
 * @param source where the size comes from
 */
public record HearingThreshold(Quantity quantity, double size, String source) {

    /**
     * The threshold of a quantity.
     *
     * @param quantity which
     * @return its threshold
     */
    public static HearingThreshold of(Quantity quantity) {
        return switch (quantity) {
            case FREQUENCY -> new HearingThreshold(quantity, 0.01, "Woodhouse and others 2012, from memory");
            case Q -> new HearingThreshold(quantity, 0.20, "Woodhouse and others 2012, from memory");
            case DECAY_TIME -> new HearingThreshold(quantity, 0.25, "Tolonen and Järveläinen 2000");
            case LEVEL -> new HearingThreshold(quantity, 1, "Zwicker and Fastl, from memory");
        };
    }

    /**
     * Judges a difference.
     *
     * @param difference its 95 % interval, in the quantity's unit
     * @param figure what it is a difference of
     * @return whether people are likely to notice
     */
    public Audibility judge(Interval difference, double figure) {
        double limit = quantity == Quantity.LEVEL ? size : size * Math.abs(figure);
        double largest = Math.max(Math.abs(difference.lower()), Math.abs(difference.upper()));
        boolean oneSided = difference.lower() > 0 || difference.upper() < 0;
        double smallest = oneSided ? Math.min(Math.abs(difference.lower()), Math.abs(difference.upper())) : 0;
        if (largest < limit) {
            return Audibility.LIKELY_NOT;
        }
        return smallest > limit ? Audibility.LIKELY : Audibility.CANNOT_TELL;
    }
}
