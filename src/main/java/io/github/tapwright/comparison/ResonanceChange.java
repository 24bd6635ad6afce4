package io.github.tapwright.comparison;

import io.github.tapwright.mode.Resonance;
import java.util.Optional;

/**
 * One resonance in two sittings.
 *
 * @param name the name that holds in either sitting; empty if it has none
 * @param first its figures before
 * @param second its figures after
 * @param frequencyHz change of frequency, Hz
 * @param q change of Q
 * @param levelDb change of level relative to the highest resonance of its own sitting, dB
 */
public record ResonanceChange(
        Optional<String> name, Resonance first, Resonance second, Change frequencyHz, Change q, Change levelDb) {

    static ResonanceChange between(Optional<String> name, Resonance a, Resonance b, SetUpSpread spread) {
        return new ResonanceChange(
                name,
                a,
                b,
                Change.between(
                        a.frequencyHz(),
                        b.frequencyHz(),
                        spread.frequencyShare() * a.frequencyHz().value(),
                        spread.frequencyShare() * b.frequencyHz().value()),
                Change.between(a.q(), b.q(), spread.qShare() * a.q().value(), spread.qShare() * b.q().value()),
                Change.between(a.levelDb(), b.levelDb(), spread.levelDb(), spread.levelDb()));
    }
}
