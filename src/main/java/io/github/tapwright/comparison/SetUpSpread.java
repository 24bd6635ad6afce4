package io.github.tapwright.comparison;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * How far the same instrument's figures scatter from one setting up to the next, as standard deviations; each with where it is known from.
 *
 * @param frequency of each frequency, a share of 0 to 0.1
 * @param q of each Q and decay time, a share of 0 to 1
 * @param level of each level, 0 to 20 dB
 */
public record SetUpSpread(KnownScatter frequency, KnownScatter q, KnownScatter level) {

    /** Where a spread comes from. */
    public enum Basis {
        /** Cautious figures for a bench nobody has studied. */
        ASSUMED("assumed, not measured on this bench"),
        /** The same, because sittings of the study that held were corrected or analysed anew: they no longer go together, or tell nothing. */
        LAPSED("assumed: the study of this bench no longer holds, make a new one"),
        /** What the maker said. */
        GIVEN("as given"),
        /** A study of this bench, kept in the archive. */
        STUDIED("measured on this bench");

        private final String words;

        Basis(String words) {
            this.words = words;
        }

        /**
         * Whether nobody has measured or said it.
         *
         * @return true for cautious figures
         */
        public boolean isAssumed() {
            return this == ASSUMED || this == LAPSED;
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
    public static final SetUpSpread USUAL = said(0.003, 0.05, 1, Basis.ASSUMED);

    /** The cautious figures again, where the study that held no longer does. */
    public static final SetUpSpread LAPSED = said(0.003, 0.05, 1, Basis.LAPSED);

    /** Refuses spreads that would hide or invent everything. */
    public SetUpSpread {
        requireWithin(frequency.deviation(), q.deviation(), level.deviation());
    }

    private static void requireWithin(double frequencyShare, double qShare, double levelDb) {
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

    /**
     * The maker's own figures.
     *
     * @param frequencyShare of each frequency, 0 to 0.1
     * @param qShare of each Q, 0 to 1
     * @param levelDb of each level, 0 to 20 dB
     * @return a spread taken as well known
     */
    public static SetUpSpread given(double frequencyShare, double qShare, double levelDb) {
        return said(frequencyShare, qShare, levelDb, Basis.GIVEN);
    }

    private static SetUpSpread said(double frequencyShare, double qShare, double levelDb, Basis basis) {
        requireWithin(frequencyShare, qShare, levelDb);
        return new SetUpSpread(
                KnownScatter.said(frequencyShare, basis),
                KnownScatter.said(qShare, basis),
                KnownScatter.said(levelDb, basis));
    }

    /**
     * The spread of each frequency.
     *
     * @return a share, 0 to 0.1
     */
    public double frequencyShare() {
        return frequency.deviation();
    }

    /**
     * The spread of each Q and decay time.
     *
     * @return a share, 0 to 1
     */
    public double qShare() {
        return q.deviation();
    }

    /**
     * The spread of each level.
     *
     * @return 0 to 20 dB
     */
    public double levelDb() {
        return level.deviation();
    }

    /**
     * What is known of one kind of figure.
     *
     * @param quantity what the figures are
     * @return its spread: shares of frequencies, Q and decay times, dB of levels
     */
    public KnownScatter known(Quantity quantity) {
        return switch (quantity) {
            case FREQUENCY -> frequency;
            case Q, DECAY_TIME -> q;
            case LEVEL -> level;
        };
    }

    /**
     * The same with another spread of levels.
     *
     * @param otherLevel of each level, 0 to 20 dB
     * @return frequencies and Q as they are
     */
    public SetUpSpread withLevel(KnownScatter otherLevel) {
        return new SetUpSpread(frequency, q, otherLevel);
    }

    /**
     * Where the figures come from, each that differs from the others for itself.
     *
     * @return such as "measured on this bench", or "frequency and Q measured on this bench, level assumed, not measured on this bench"
     */
    public String basisWords() {
        return basisWords(List.of(Quantity.FREQUENCY, Quantity.Q, Quantity.LEVEL));
    }

    /**
     * The same of some kinds of figures.
     *
     * @param quantities which kinds, at least one
     * @return such as "measured on this bench"
     */
    public String basisWords(List<Quantity> quantities) {
        Map<Basis, String> names = new LinkedHashMap<>();
        quantities.forEach(q -> names.merge(known(q).basis(), q.words(), (one, next) -> one + " and " + next));
        return names.size() == 1
                ? known(quantities.get(0)).basis().words()
                : names.entrySet().stream()
                        .map(e -> e.getValue() + " " + e.getKey().words())
                        .collect(Collectors.joining(", "));
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
        return of(quantity, value).limitOfTwo95();
    }

    /**
     * What setting up again does to one figure: zero with this spread about it.
     *
     * @param quantity what the figure is
     * @param value the figure
     * @return an estimate of value 0 in the figure's unit
     */
    public Estimate of(Quantity quantity, double value) {
        KnownScatter scatter = known(quantity);
        double scale = quantity == Quantity.LEVEL ? 1 : Math.abs(value);
        return scatter.estimate().times(scale);
    }

    /**
     * How far figures of a kind scatter, as people read it.
     *
     * @param quantity what the figures are
     * @return such as "0.3 %" or "1 dB": frequencies to a thousandth of a percent, the others to a hundredth
     */
    public String words(Quantity quantity) {
        return switch (quantity) {
            case FREQUENCY -> Figures.plain(Math.round(1e5 * frequencyShare()) / 1e3) + " %";
            case Q, DECAY_TIME -> Figures.plain(Math.round(1e4 * qShare()) / 1e2) + " %";
            case LEVEL -> Figures.plain(Math.round(1e2 * levelDb()) / 1e2) + " dB";
        };
    }
}
