package io.github.tapwright.chart;

import io.github.tapwright.level.BandLevel;
import java.util.List;

/**
 * One spectrum of a picture of levels.
 *
 * @param label what the legend calls it; shown only where there are several spectra
 * @param bands levels of the bands that hold sound, lowest first
 */
public record BandSpectrum(String label, List<BandLevel> bands) {

    /** Keeps a copy of the list. */
    public BandSpectrum {
        bands = List.copyOf(bands);
    }
}
