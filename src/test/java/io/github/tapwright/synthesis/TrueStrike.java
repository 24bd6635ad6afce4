package io.github.tapwright.synthesis;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One strike as it was made.
 *
 * @param onsetSeconds when the contact began, from the start of the recording, between samples as a rule
 * @param contact shape of the force
 * @param strength impulse of the contact, in the recording's own unit
 * @param modeFactors how the place of the strike changed each mode's amplitude, 1 for no change
 * @param fault what was made wrong on purpose
 * @param secondOnsetSeconds onset of the second contact of a double strike
 */
public record TrueStrike(
        double onsetSeconds,
        HalfSineContact contact,
        double strength,
        List<Double> modeFactors,
        Optional<PlantedFault> fault,
        OptionalDouble secondOnsetSeconds) {

    /** Keeps a copy of the factors. */
    public TrueStrike {
        modeFactors = List.copyOf(modeFactors);
    }

    /** Whether an analysis should use this strike. */
    public boolean good() {
        return fault.isEmpty();
    }

    TrueStrike scaled(double factor) {
        return new TrueStrike(onsetSeconds, contact, strength * factor, modeFactors, fault, secondOnsetSeconds);
    }
}
