package io.github.tapwright.synthesis;

import io.github.tapwright.recording.Recording;
import java.util.List;
import org.hipparchus.complex.Complex;

/**
 * A made recording with its truth.
 *
 * @param recording what a microphone would have given, mono
 * @param modes the true modes
 * @param strikes every strike, in order of time
 * @param noiseRms rms of the room's noise over everything, re full scale, without hum and talk
 */
public record SyntheticTaps(Recording recording, List<TrueMode> modes, List<TrueStrike> strikes, double noiseRms) {

    /** Keeps copies of the lists. */
    public SyntheticTaps {
        modes = List.copyOf(modes);
        strikes = List.copyOf(strikes);
    }

    /** The strikes with nothing wrong. */
    public List<TrueStrike> goodStrikes() {
        return strikes.stream().filter(TrueStrike::good).toList();
    }

    /**
     * Complex amplitude of one mode the moment a strike's contact ends: from there on its sound is
     * Re(c·exp(s·t)), t counted from that moment.
     *
     * @param strike which
     * @param mode index of the mode
     */
    public Complex amplitudeAfterContact(TrueStrike strike, int mode) {
        TrueMode m = modes.get(mode);
        return m.residue()
                .multiply(strike.contact().response(m.pole(), strike.contact().durationSeconds()))
                .multiply(strike.strength() * strike.modeFactors().get(mode));
    }
}
