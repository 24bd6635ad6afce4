package io.github.tapwright.chart;

import io.github.tapwright.level.BandLevel;
import io.github.tapwright.level.Calibration;
import io.github.tapwright.level.LevelReference;
import java.util.DoubleSummaryStatistics;
import java.util.List;

/**
 * What a picture of band levels shows.
 *
 * @param title what was measured
 * @param subtitles lines below the title: recordings, calibration
 * @param reference what all levels are measured against
 * @param spectra one to {@value #MOST_SPECTRA}, each with a band at least
 */
public record LevelPicture(String title, List<String> subtitles, LevelReference reference, List<BandSpectrum> spectra)
        implements Picture {

    /** Bars of more spectra cannot be told apart. */
    public static final int MOST_SPECTRA = 5;

    /** Refuses a picture of nothing or of too much. */
    public LevelPicture {
        subtitles = List.copyOf(subtitles);
        spectra = List.copyOf(spectra);
        if (spectra.isEmpty() || spectra.size() > MOST_SPECTRA) {
            throw new IllegalArgumentException(
                    "a picture shows 1 to " + MOST_SPECTRA + " spectra, not " + spectra.size());
        }
        if (spectra.stream().anyMatch(s -> s.bands().isEmpty())) {
            throw new IllegalArgumentException("a spectrum without bands cannot be drawn");
        }
    }

    /** Whether levels are sound pressure levels. */
    boolean calibrated() {
        return reference instanceof Calibration;
    }

    DoubleSummaryStatistics levelsDb() {
        return spectra.stream()
                .flatMap(s -> s.bands().stream())
                .mapToDouble(b -> b.level().levelDb())
                .summaryStatistics();
    }

    double lowHz() {
        return spectra.stream()
                .flatMap(s -> s.bands().stream())
                .map(BandLevel::band)
                .mapToDouble(b -> b.lowerHz())
                .min()
                .orElseThrow();
    }

    double highHz() {
        return spectra.stream()
                .flatMap(s -> s.bands().stream())
                .map(BandLevel::band)
                .mapToDouble(b -> b.upperHz())
                .max()
                .orElseThrow();
    }
}
