package io.github.tapwright.note.run;

/**
 * How the maker went over the fingerboard; pitch alone cannot tell a scale up one string from one across all.
 */
public enum PlayingOrder {
    /** Every string from its open note up, then the next. */
    STRING_BY_STRING(0),
    /** The lowest fret at which each pitch can be played: a chromatic scale in first position. */
    LOWEST_FRET(0.1);

    private final double costPerFret;

    PlayingOrder(double costPerFret) {
        this.costPerFret = costPerFret;
    }

    /** What a place costs for lying high up the neck. */
    double cost(Fret place) {
        return costPerFret * place.fret();
    }
}
