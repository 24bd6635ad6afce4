package io.github.tapwright.mode;

import io.github.tapwright.tap.ResponseCurve;
import io.github.tapwright.tap.Strike;
import io.github.tapwright.tap.TapSettings;
import java.util.List;
import java.util.Optional;

/**
 * What one set of tap recordings says about a body.
 *
 * @param strikes every strike found, used or rejected, in order of source and time
 * @param curve the response curve, empty if no strike could be used
 * @param resonances lowest first; empty if nothing could be resolved
 * @param warnings what the reader must know before trusting the numbers
 * @param settings what was looked for
 * @param methodVersion version of the method that made these numbers
 */
public record TapResult(
        List<Strike> strikes,
        Optional<ResponseCurve> curve,
        List<NamedResonance> resonances,
        List<String> warnings,
        TapSettings settings,
        String methodVersion) {

    /** Keeps copies of the lists. */
    public TapResult {
        strikes = List.copyOf(strikes);
        resonances = List.copyOf(resonances);
        warnings = List.copyOf(warnings);
    }
}
