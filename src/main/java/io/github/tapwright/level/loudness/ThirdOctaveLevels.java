package io.github.tapwright.level.loudness;

import java.util.List;

/**
 * Levels of a steady sound in the 28 third-octave bands from 25 Hz to 12.5 kHz.
 *
 * @param levelsDb dB SPL, 28 finite values, lowest band first; −60 where there is nothing
 */
public record ThirdOctaveLevels(List<Double> levelsDb) {

    /** Keeps a copy, and refuses a wrong number of bands or values that are no numbers. */
    public ThirdOctaveLevels {
        levelsDb = List.copyOf(levelsDb);
        if (levelsDb.size() != FilterTable.BANDS || levelsDb.stream().anyMatch(l -> !Double.isFinite(l))) {
            throw new IllegalArgumentException("loudness needs finite levels in 28 bands, 25 Hz to 12.5 kHz");
        }
    }

    double[] toArray() {
        return levelsDb.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
