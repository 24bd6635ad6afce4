package io.github.tapwright.comparison;

import io.github.tapwright.instrument.StringState;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.SittingOutline;
import java.util.Optional;

/** Which sittings of taps speak of the same body. */
public final class TapSittings {

    private TapSittings() {}

    /**
     * Why a sitting of taps cannot stand beside others.
     *
     * @param sitting with {@link io.github.tapwright.sitting.Procedure.BodyTaps}
     * @return the reason; empty if it can
     */
    public static Optional<String> objection(SittingOutline sitting) {
        if (sitting.conditions().hole() == HoleState.COVERED) {
            return Optional.of("the soundhole was covered, which makes another body of it");
        }
        if (sitting.conditions().addedMass().isPresent()) {
            return Optional.of("a mass was stuck on, which makes another body of it");
        }
        if (sitting.conditions().strings().state().equals(Optional.of(StringState.FREE))) {
            return Optional.of("strings free, which ring along and drain the body");
        }
        return sitting.resonances().isEmpty()
                ? Optional.of("no resonance was found in it; look at its strikes with sitting show")
                : Optional.empty();
    }
}
