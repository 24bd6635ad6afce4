package io.github.tapwright.sitting.live;

/** Sound that is being played. */
public interface PlayingSound extends AutoCloseable {

    /**
     * How far it has come.
     *
     * @return seconds heard so far
     */
    double seconds();

    /**
     * Whether it has ended.
     *
     * @return true once everything was heard, or it was closed
     */
    boolean isOver();

    /**
     * Makes it louder or softer while it plays.
     *
     * @param gainDb 0 dB or less; more is taken as 0 dB
     */
    void setGainDb(double gainDb);

    /** Falls silent. */
    @Override
    void close();
}
