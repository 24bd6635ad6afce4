package io.github.tapwright.mode;

import io.github.tapwright.tap.Decays;
import io.github.tapwright.tap.ResponseCurveAverage;
import io.github.tapwright.tap.StrikeSet;
import io.github.tapwright.tap.TapSettings;
import io.github.tapwright.tap.TapTrack;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** From tracks of tap recordings to strikes, response curve and resonances. */
public final class TapAnalysis {

    /** Changes whenever the same recording could give other numbers. */
    public static final String METHOD_VERSION = "taps-7";

    private TapAnalysis() {}

    /**
     * Analyses tracks as one set: same instrument, same set-up.
     *
     * @param tracks one for each recording, at least one, all of one sample rate
     * @param settings what to look for
     * @param hole whether the soundhole was open, which decides what names are possible
     * @return strikes, curve and resonances
     * @throws io.github.tapwright.recording.UnreadableRecordingException if the recordings have different sample rates
     */
    public static TapResult analyse(List<TapTrack> tracks, TapSettings settings, HoleState hole) {
        return analyse(StrikeSet.find(tracks, settings), settings, hole);
    }

    /**
     * Analyses strikes that are found already.
     *
     * @param set the strikes, found with the same settings
     * @param settings what to look for
     * @param hole whether the soundhole was open, which decides what names are possible
     * @return strikes, curve and resonances
     */
    public static TapResult analyse(StrikeSet set, TapSettings settings, HoleState hole) {
        List<String> warnings = new ArrayList<>(set.notes());
        if (set.decays().isEmpty()) {
            return new TapResult(set.strikes(), Optional.empty(), List.of(), warnings, settings, METHOD_VERSION);
        }
        Decays decays = set.decays().orElseThrow();
        ResonanceReport report =
                new ResonanceReport(new BandSurvey(new DecaySpectra(decays), settings).modes(), settings);
        warnings.addAll(report.warnings());
        addDoubts(warnings, decays, report.resonances());
        return new TapResult(
                set.strikes(),
                Optional.of(ResponseCurveAverage.of(decays, settings)),
                ModeNaming.suggest(report.resonances(), hole),
                warnings,
                settings,
                METHOD_VERSION);
    }

    private static void addDoubts(List<String> warnings, Decays decays, List<Resonance> resonances) {
        warnings.add(String.format(
                Locale.ROOT,
                "resonances closer than about %.1f Hz cannot be told apart in %.2f s of decay",
                0.886 / decays.seconds(),
                decays.seconds()));
        if (decays.count() < 3) {
            warnings.add("with fewer than three used strikes the spread from strike to strike is unknown");
        }
        if (resonances.isEmpty()) {
            warnings.add("no resonance could be resolved: too short, too noisy, or no body rang");
        }
    }
}
