package io.github.tapwright.tap;

import java.util.Arrays;
import java.util.Optional;

/**
 * Why a strike is not used, worst first.
 */
public enum RejectionReason {
    /** The recording ran into full scale, or was cut flat at some other height. */
    CLIPPED("clipped", "clipped"),
    /** A second contact falls within the decay of the first. */
    DOUBLE_STRIKE("double strike", "double strike"),
    /** The decay does not stand far enough above the room's noise. */
    TOO_QUIET("too quiet", "too quiet"),
    /** The recording or the next strike ends the decay too early. */
    CUT_OFF("cut off", "cut off"),
    /** The strike does not sound like its fellows. */
    OUTLIER("outlier", "outlier"),
    /** The maker does not want it, for a reason of their own. */
    SET_ASIDE("set aside by the maker", "set aside by the maker");

    private final String key;
    private final String words;

    RejectionReason(String key, String words) {
        this.key = key;
        this.words = words;
    }

    /**
     * The key kept in archives and given to scripts; never changed, whatever the words become.
     *
     * @return lower case
     */
    public String key() {
        return key;
    }

    /**
     * The reason as the maker reads it.
     *
     * @return lower-case words
     */
    public String words() {
        return words;
    }

    /**
     * Finds a reason by its key.
     *
     * @param key as {@link #key()} gives it
     * @return the reason, or empty if none has this key
     */
    public static Optional<RejectionReason> find(String key) {
        return Arrays.stream(values()).filter(r -> r.key.equals(key)).findFirst();
    }
}
