package io.github.tapwright.tap;

/**
 * A strike the maker does not want used, known by when it began; the recording itself stays as it is.
 *
 * @param source which recording of the set it is in, from 0
 * @param onsetSeconds when the contact began, from the start of that recording, as {@link Strike#onsetSeconds()} says
 */
public record SetAside(int source, double onsetSeconds) {

    /** Strikes closer together than 130 ms count as one that bounced, so this much doubt finds no other. */
    private static final double SAME_SECONDS = 0.05;

    /** Refuses what can be no strike. */
    public SetAside {
        if (source < 0 || !(onsetSeconds >= 0) || Double.isInfinite(onsetSeconds)) {
            throw new IllegalArgumentException(
                    "no strike can be set aside at " + onsetSeconds + " s of recording " + (source + 1));
        }
    }

    /**
     * The strike of a result.
     *
     * @param strike as an analysis found it
     * @return what sets it aside
     */
    public static SetAside of(Strike strike) {
        return new SetAside(strike.source(), strike.onsetSeconds());
    }

    /**
     * Whether both mean one strike; another version of the method may place the onset a little elsewhere.
     *
     * @param other another
     * @return true if they lie within 50 ms of each other in the same recording
     */
    public boolean isSameAs(SetAside other) {
        return source == other.source && Math.abs(onsetSeconds - other.onsetSeconds) < SAME_SECONDS;
    }
}
