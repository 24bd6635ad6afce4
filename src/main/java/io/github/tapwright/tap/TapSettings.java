package io.github.tapwright.tap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a tap analysis looks for; kept with every result.
 *
 * @param lowHz lowest frequency reported, Hz, at least 20
 * @param highHz highest frequency reported, Hz, at least twice {@code lowHz} and at most 5,000
 * @param longestDecaySeconds how much of each decay is used at most, s
 * @param minimumSnrDb strikes whose decay stands less than this above the noise are too quiet, dB
 * @param setAside strikes the maker does not want used, in order of recording and time
 */
public record TapSettings(
        double lowHz, double highHz, double longestDecaySeconds, double minimumSnrDb, List<SetAside> setAside) {

    /** The band of a guitar body's separate resonances. */
    public static final TapSettings STANDARD = new TapSettings(60, 1000, 0.8, 12);

    /** Refuses settings no analysis can honour. */
    public TapSettings {
        setAside = setAside.stream()
                .distinct()
                .sorted(Comparator.comparingInt(SetAside::source).thenComparingDouble(SetAside::onsetSeconds))
                .toList();
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
     * Settings under which every strike counts that nothing speaks against.
     *
     * @param lowHz lowest frequency reported, Hz, at least 20
     * @param highHz highest frequency reported, Hz, at least twice {@code lowHz} and at most 5,000
     * @param longestDecaySeconds how much of each decay is used at most, s
     * @param minimumSnrDb strikes whose decay stands less than this above the noise are too quiet, dB
     */
    public TapSettings(double lowHz, double highHz, double longestDecaySeconds, double minimumSnrDb) {
        this(lowHz, highHz, longestDecaySeconds, minimumSnrDb, List.of());
    }

    /**
     * These settings over another band.
     *
     * @param low lowest frequency reported, Hz
     * @param high highest frequency reported, Hz
     * @return changed settings
     */
    public TapSettings withBand(double low, double high) {
        return new TapSettings(low, high, longestDecaySeconds, minimumSnrDb, setAside);
    }

    /**
     * These settings with other strikes set aside.
     *
     * @param strikes all strikes not wanted; none brings every strike back
     * @return changed settings
     */
    public TapSettings withSetAside(List<SetAside> strikes) {
        return new TapSettings(lowHz, highHz, longestDecaySeconds, minimumSnrDb, strikes);
    }

    /**
     * These settings with one strike more, or one less, set aside.
     *
     * @param strike which strike
     * @return set aside if it was not, wanted again if it was
     */
    public TapSettings toggled(SetAside strike) {
        List<SetAside> changed = new ArrayList<>(setAside);
        if (!changed.removeIf(s -> s.isSameAs(strike))) {
            changed.add(strike);
        }
        return withSetAside(changed);
    }
}
