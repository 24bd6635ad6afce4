package io.github.tapwright.tap;

/**
 * What a tap analysis looks for; kept with every result.
 *
 * @param lowHz lowest frequency reported, Hz, at least 20
 * @param highHz highest frequency reported, Hz, at least twice {@code lowHz} and at most 5,000
 * @param longestDecaySeconds how much of each decay is used at most, s
 * @param minimumSnrDb strikes whose decay stands less than this above the noise are too quiet, dB
 */
public record TapSettings(double lowHz, double highHz, double longestDecaySeconds, double minimumSnrDb) {

    /** The band of a guitar body's separate resonances. */
    public static final TapSettings STANDARD = new TapSettings(60, 1000, 0.8, 12);

    /** Refuses settings no analysis can honour. */
    public TapSettings {
        if (!(lowHz >= 20) || !(highHz >= 2 * lowHz) || !(highHz <= 5000)) {
            throw new IllegalArgumentException(
                    "the band must lie between 20 and 5000 Hz and span an octave at least, was " + lowHz + " to "
                            + highHz + " Hz");
        }
        if (!(longestDecaySeconds >= 0.1) || !(longestDecaySeconds <= 5)) {
            throw new IllegalArgumentException(
                    "the longest decay used must lie between 0.1 and 5 s, was " + longestDecaySeconds);
        }
        if (!(minimumSnrDb >= 0) || Double.isInfinite(minimumSnrDb)) {
            throw new IllegalArgumentException("the least signal-to-noise ratio must be 0 dB or more");
        }
    }

    /**
     * These settings over another band.
     *
     * @param low lowest frequency reported, Hz
     * @param high highest frequency reported, Hz
     * @return changed settings
     */
    public TapSettings withBand(double low, double high) {
        return new TapSettings(low, high, longestDecaySeconds, minimumSnrDb);
    }
}
