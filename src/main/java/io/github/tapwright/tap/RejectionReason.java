package io.github.tapwright.tap;

/**
 * Why a strike is not used, worst first.
 */
public enum RejectionReason {
    /** The recording ran into full scale, or was cut flat at some other height. */
    CLIPPED("clipped"),
    /** A second contact falls within the decay of the first. */
    DOUBLE_STRIKE("double strike"),
    /** The decay does not stand far enough above the room's noise. */
    TOO_QUIET("too quiet"),
    /** The recording or the next strike ends the decay too early. */
    CUT_OFF("cut off"),
    /** The strike does not sound like its fellows. */
    OUTLIER("outlier"),
    /** The maker does not want it, for a reason of their own. */
    SET_ASIDE("set aside by the maker");

    private final String words;

    RejectionReason(String words) {
        this.words = words;
    }

    /**
     * The reason as the maker reads it; stable, because files and scripts rely on it.
     *
     * @return lower-case words
     */
    public String words() {
        return words;
    }
}
