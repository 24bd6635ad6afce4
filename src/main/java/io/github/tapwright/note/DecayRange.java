package io.github.tapwright.note;

/** Parts of a decay curve from which a 60 dB time is extrapolated. Source: [ISO3382-1]. */
public enum DecayRange {
    /** Early decay time: the first 10 dB, times six. */
    EDT(0, 10),
    /** From 5 to 25 dB below the start, times three. */
    T20(5, 25),
    /** From 5 to 35 dB below the start, times two. */
    T30(5, 35);

    private final double fromDb;
    private final double toDb;

    DecayRange(double fromDb, double toDb) {
        this.fromDb = fromDb;
        this.toDb = toDb;
    }

    /**
     * Where the range begins.
     *
     * @return dB below the start of the decay
     */
    public double fromDb() {
        return fromDb;
    }

    /**
     * Where the range ends.
     *
     * @return dB below the start of the decay
     */
    public double toDb() {
        return toDb;
    }
}
