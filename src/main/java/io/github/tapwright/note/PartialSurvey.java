package io.github.tapwright.note;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Fits every partial of a note, one after the other, each in what the others leave.
 *
 * <p>First all as single sines, strongest neighbours taken away on the way up; then each once more, as one sine or two,
 * with all others taken away.
 */
final class PartialSurvey {

    private static final double BAND_OF_SPACING = 0.42;
    private static final double WIDEST_HZ = 40;
    private static final int FEWEST_BINS = 24;
    private static final int MOST_BINS = 700;
    private static final double REACH_SPACINGS = 8;

    private final NoteSpectrum spectrum;
    private final double spacingHz;
    private final Map<Integer, PartialFit> fits = new TreeMap<>();

    /**
     * Surveys.
     *
     * @param spectrum of the stretch; what is left in it afterwards is no partial
     * @param series where partials are
     */
    PartialSurvey(NoteSpectrum spectrum, HarmonicEvidence.Series series) {
        this.spectrum = spectrum;
        this.spacingHz = series.fundamentalHz();
        series.peaks().forEach((number, peak) -> roughly(number, peak.hz()));
        for (Integer number : fits.keySet().stream().toList()) {
            closely(number);
        }
    }

    private LineBand band(double hz) {
        double half = Math.min(Math.min(BAND_OF_SPACING * spacingHz, WIDEST_HZ), MOST_BINS / 2.0 * spectrum.binHz());
        return spectrum.band(hz, half, FEWEST_BINS);
    }

    private void roughly(int number, double hz) {
        PartialChoice.one(band(hz), hz).ifPresent(fit -> {
            fits.put(number, fit);
            spectrum.subtract(fit, REACH_SPACINGS * spacingHz);
        });
    }

    private void closely(int number) {
        PartialFit rough = fits.get(number);
        if (rough == null) {
            return;
        }
        spectrum.restore(rough, REACH_SPACINGS * spacingHz);
        double hz = rough.tones().get(0).hz();
        Optional<PartialFit> one = PartialChoice.one(band(hz), hz);
        if (one.isEmpty()) {
            fits.remove(number);
            return;
        }
        PartialFit fit = PartialChoice.oneOrTwo(one.orElseThrow());
        fits.put(number, fit);
        spectrum.subtract(fit, REACH_SPACINGS * spacingHz);
    }

    /** The fit of every partial found, by number. */
    Map<Integer, PartialFit> fits() {
        return fits;
    }
}
