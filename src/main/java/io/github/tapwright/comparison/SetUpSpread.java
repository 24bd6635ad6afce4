package io.github.tapwright.comparison;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;

/**
 * How far the same instrument's figures scatter from one setting up to the next, as standard deviations.
 *
 * @param frequencyShare of each frequency, 0 to 0.1
 * @param qShare of each Q and decay time, 0 to 1
 * @param levelDb of each level, 0 to 20 dB
 * @param degreesOfFreedom how much is known about them, above 0
 * @param basis where they come from
 */
public record SetUpSpread(double frequencyShare, double qShare, double levelDb, double degreesOfFreedom, Basis basis) {

    /** Where a spread comes from. */
    public enum Basis {
        /** Cautious figures for a bench nobody has studied. */
        ASSUMED("assumed, not measured on this bench"),
        /** The same, because a sitting of the study that held was corrected and no longer goes with the others. */
        LAPSED("assumed: the sittings of this bench's study no longer go together, make a new one"),
        /** What the maker said. */
        GIVEN("as given"),
        /** A study of this bench, kept in the archive. */
        STUDIED("measured on this bench");

        private final String words;

        Basis(String words) {
            this.words = words;
        }

        /**
         * The basis as people read it.
         *
         * @return words
         */
        public String words() {
            return words;
        }
    }

    /**
     * Where the maker has not measured it: 0.3 % of frequency, 5 % of Q, 1 dB. Common practice, no source; five
     * sittings of one instrument on one day give a workshop its own figures.
     */
    public static final SetUpSpread USUAL = new SetUpSpread(0.003, 0.05, 1, Double.POSITIVE_INFINITY, Basis.ASSUMED);

    /** The cautious figures again, where the study that held no longer does. */
    static final SetUpSpread LAPSED =
            new SetUpSpread(USUAL.frequencyShare, USUAL.qShare, USUAL.levelDb, Double.POSITIVE_INFINITY, Basis.LAPSED);

    /** Refuses spreads that would hide or invent everything. */
    public SetUpSpread {
        if (!(frequencyShare >= 0 && frequencyShare <= 0.1)) {
            throw new RefusedEntryException("the spread of frequencies must lie between 0 and 10 %");
        }
        if (!(qShare >= 0 && qShare <= 1)) {
            throw new RefusedEntryException("the spread of Q must lie between 0 and 100 %");
        }
        if (!(levelDb >= 0 && levelDb <= 20)) {
            throw new RefusedEntryException("the spread of levels must lie between 0 and 20 dB");
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("degrees of freedom must be positive, were " + degreesOfFreedom);
        }
    }

    /**
     * The maker's own figures.
     *
     * @param frequencyShare of each frequency, 0 to 0.1
     * @param qShare of each Q, 0 to 1
     * @param levelDb of each level, 0 to 20 dB
     * @return a spread taken as well known
     */
    public static SetUpSpread given(double frequencyShare, double qShare, double levelDb) {
        return new SetUpSpread(frequencyShare, qShare, levelDb, Double.POSITIVE_INFINITY, Basis.GIVEN);
    }

    /**
     * The figures as people read them.
     *
     * @return such as "0.3 % of frequency, 5 % of Q and 1 dB"
     */
    public String words() {
        return words(Quantity.FREQUENCY) + " of frequency, " + words(Quantity.Q) + " of Q and " + words(Quantity.LEVEL);
    }

    /**
     * By how much two set-ups of the same body differ at most, 19 times of 20: t_0.975(ν)·√2·s.
     *
     * @param quantity what the figure is
     * @param value the figure
     * @return not negative, in the figure's unit
     */
    public double limit95(Quantity quantity, double value) {
        return Math.sqrt(2) * of(quantity, value).halfWidth95();
    }

    /**
     * What setting up again does to one figure: zero with this spread about it.
     *
     * @param quantity what the figure is
     * @param value the figure
     * @return an estimate of value 0 in the figure's unit
     */
    public Estimate of(Quantity quantity, double value) {
        double u = switch (quantity) {
            case FREQUENCY -> frequencyShare * value;
            case Q, DECAY_TIME -> qShare * value;
            case LEVEL -> levelDb;
        };
        return new Estimate(0, Math.abs(u), degreesOfFreedom);
    }

    /**
     * How far figures of a kind scatter, as people read it.
     *
     * @param quantity what the figures are
     * @return such as "0.3 %" or "1 dB": frequencies to a thousandth of a percent, the others to a hundredth
     */
    public String words(Quantity quantity) {
        return switch (quantity) {
            case FREQUENCY -> Figures.plain(Math.round(1e5 * frequencyShare) / 1e3) + " %";
            case Q, DECAY_TIME -> Figures.plain(Math.round(1e4 * qShare) / 1e2) + " %";
            case LEVEL -> Figures.plain(Math.round(1e2 * levelDb) / 1e2) + " dB";
        };
    }
}
