package io.github.tapwright.note;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Fits every partial of a note, one after the other, each in what the others leave.
 *
 * <p>First all as single sines, strongest neighbours taken away on the way up; then each once more, as one sine or two,
 * with all others taken away. A second sine that lies too far off, or dies too soon, to be the same string is taken away as a
 * stranger, and the partial is fitted again.
 */
final class PartialSurvey {

    private static final double BAND_OF_SPACING = 0.42;
    private static final double WIDEST_HZ = 40;
    private static final int FEWEST_BINS = 24;
    private static final int MOST_BINS = 700;
    private static final double REACH_SPACINGS = 8.5;
    private static final double ROUGH_HZ = 8;
    private static final double NARROWEST_HZ = 7;
    private static final double BAND_WIDTHS = 6;
    private static final int MOST_STRANGERS = 2;
    private static final double CLOSE_HZ = 400;
    private static final int FEWEST_KEPT = 4;

    /** Planes of one string differ by some two cents [Woodhouse2004]; more than this is another resonance. */
    private static final double OWN_CENTS = 8;

    private static final double OWN_HZ = 0.6;

    /** Dead within 0.11 s: the pluck's thump, not a string. */
    private static final double THUMP_WIDTH_HZ = 20;

    private final NoteSpectrum spectrum;
    private final double spacingHz;
    private final Map<Integer, PartialFit> fits = new TreeMap<>();
    private final List<SoundingTone> strangers = new ArrayList<>();

    /**
     * Surveys.
     *
     * @param spectrum of the stretch
     * @param series where partials are
     * @param highestHz up to where they were looked for
     */
    PartialSurvey(NoteSpectrum spectrum, HarmonicEvidence.Series series, double highestHz) {
        this.spectrum = spectrum;
        this.spacingHz = series.fundamentalHz();
        series.peaks().forEach((number, peak) -> roughly(number, peak.hz()));
        for (Integer number : fits.keySet().stream().toList()) {
            closely(number);
        }
        leaveOutTheTop(series, highestHz);
    }

    /**
     * Nothing above the highest partial was taken away from it, so the next one's tail, which the search did not reach, may lean
     * on it. Where partials lie close it serves its neighbour only.
     */
    private void leaveOutTheTop(HarmonicEvidence.Series series, double highestHz) {
        int top = fits.keySet().stream().mapToInt(Integer::intValue).max().orElse(0);
        boolean more = series.hz(top + 1) > highestHz;
        if (more && spacingHz < CLOSE_HZ && fits.size() > FEWEST_KEPT) {
            fits.remove(top);
        }
    }

    private LineBand band(int number, double hz, double halfWidthHz) {
        double half = Math.min(Math.min(BAND_OF_SPACING * spacingHz, WIDEST_HZ), MOST_BINS / 2.0 * spectrum.binHz());
        return spectrum.band(hz, Math.min(half, halfWidthHz), FEWEST_BINS, beside(number, hz));
    }

    /** What is known to sound near a partial: its neighbours and all strangers, its own last fit left out. */
    private List<SoundingTone> beside(int number, double hz) {
        List<SoundingTone> others = new ArrayList<>();
        fits.forEach((n, fit) -> {
            if (n != number) {
                for (int m = 0; m < fit.tones().size(); m++) {
                    others.add(fit.sounding(m));
                }
            }
        });
        others.addAll(strangers);
        others.removeIf(o -> Math.abs(o.tone().hz() - hz) > REACH_SPACINGS * spacingHz);
        return others;
    }

    private void roughly(int number, double hz) {
        PartialChoice.rough(band(number, hz, ROUGH_HZ), hz).ifPresent(fit -> fits.put(number, fit));
    }

    private void closely(int number) {
        PartialFit last = Objects.requireNonNull(fits.get(number));
        for (int found = 0; found <= MOST_STRANGERS; found++) {
            DecayingTone tone = last.tones().get(last.strongest());
            double half = Math.max(NARROWEST_HZ, BAND_WIDTHS * tone.widthHz());
            Optional<PartialFit> one = PartialChoice.one(band(number, tone.hz(), half), tone);
            if (one.isEmpty()) {
                fits.remove(number);
                return;
            }
            last = PartialChoice.oneOrTwo(one.orElseThrow());
            if (!hasStranger(last)) {
                break;
            }
            strangers.add(last.sounding(1 - last.strongest()));
            last = new PartialFit(last.band(), List.of(last.tones().get(last.strongest())));
        }
        if (last.tones().get(last.strongest()).widthHz() > THUMP_WIDTH_HZ) {
            fits.remove(number);
        } else {
            fits.put(number, last);
        }
    }

    /** Whether the weaker of two sines lies too far off to be the same partial in another plane. */
    private static boolean hasStranger(PartialFit fit) {
        if (fit.tones().size() < 2) {
            return false;
        }
        DecayingTone own = fit.tones().get(fit.strongest());
        DecayingTone other = fit.tones().get(1 - fit.strongest());
        double apart = Math.abs(own.hz() - other.hz());
        return apart > OWN_HZ + OWN_CENTS / Cents.PER_NEPER * own.hz() || other.widthHz() > THUMP_WIDTH_HZ;
    }

    /** The fit of every partial found, by number. */
    Map<Integer, PartialFit> fits() {
        return fits;
    }
}
