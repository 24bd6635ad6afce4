package io.github.tapwright.mode.body;

import io.github.tapwright.mode.HoleState;
import java.util.Optional;

/** Bodies behind check values: A, a "classical" one, with losses or with a live back. */
final class Bodies {

    static final double LOSSLESS = Double.POSITIVE_INFINITY;
    static final Soundhole CLASSICAL_HOLE = new Soundhole(0.0425, 0.0025, LOSSLESS);

    static final CoupledBody A_DAMPED =
            rigidBack(0.0140, new Soundhole(0.0425, 0.0025, 50), new Plate(0.080, 0.040, 165, 30));

    static final CoupledBody A_WITH_BACK = new CoupledBody(
            Air.ROUND,
            0.0140,
            CLASSICAL_HOLE,
            Plate.lossless(0.080, 0.040, 165),
            Optional.of(Plate.lossless(0.150, 0.035, 200)),
            HoleState.OPEN);

    private Bodies() {}

    private static CoupledBody rigidBack(double volume, Soundhole hole, Plate top) {
        return new CoupledBody(Air.ROUND, volume, hole, top, Optional.empty(), HoleState.OPEN);
    }
}
