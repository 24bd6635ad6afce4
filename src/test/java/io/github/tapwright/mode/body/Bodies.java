package io.github.tapwright.mode.body;

import io.github.tapwright.mode.HoleState;
import java.util.Optional;

/** The bodies behind the check values: A "classical", B "steel", C "light top". */
final class Bodies {

    static final double LOSSLESS = Double.POSITIVE_INFINITY;
    static final Soundhole CLASSICAL_HOLE = new Soundhole(0.0425, 0.0025, LOSSLESS);

    static final CoupledBody A = rigidBack(0.0140, CLASSICAL_HOLE, Plate.lossless(0.080, 0.040, 165));
    static final CoupledBody B =
            rigidBack(0.0164, new Soundhole(0.0508, 0.003, LOSSLESS), Plate.lossless(0.090, 0.038, 155));
    static final CoupledBody C = rigidBack(0.0140, CLASSICAL_HOLE, Plate.lossless(0.050, 0.045, 170));

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
