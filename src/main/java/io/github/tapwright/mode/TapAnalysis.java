package io.github.tapwright.mode;

import io.github.tapwright.tap.TapSettings;
import io.github.tapwright.tap.TapTrack;
import java.util.List;
import java.util.Optional;

/** From tracks of tap recordings to strikes, response curve and resonances. */
public final class TapAnalysis {

    /** Changes whenever the same recording could give other numbers. */
    public static final String METHOD_VERSION = "taps-1";

    private TapAnalysis() {}

    /**
     * Analyses tracks as one set: same instrument, same set-up.
     *
     * @param tracks one for each recording, at least one
     * @param settings what to look for
     * @param hole whether the soundhole was open, which decides what names are possible
     * @return strikes, curve and resonances
     */
    public static TapResult analyse(List<TapTrack> tracks, TapSettings settings, HoleState hole) {
        return new TapResult(List.of(), Optional.empty(), List.of(), List.of(), settings, METHOD_VERSION);
    }
}
