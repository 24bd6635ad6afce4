package io.github.tapwright.comparison;

import io.github.tapwright.instrument.RefusedEntryException;

/**
 * How far the same instrument's figures scatter from one setting up to the next, as standard deviations.
 *
 * @param frequencyShare of each frequency, 0 to 0.1
 * @param qShare of each Q, 0 to 1
 * @param levelDb of each relative level, 0 to 20 dB
 */
public record SetUpSpread(double frequencyShare, double qShare, double levelDb) {

    /**
     * Where the maker has not measured it: 0.3 % of frequency, 5 % of Q, 1 dB. Common practice, no source; five
     * sittings of one instrument on one day give a workshop its own figures.
     */
    public static final SetUpSpread USUAL = new SetUpSpread(0.003, 0.05, 1);

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
    }
}
