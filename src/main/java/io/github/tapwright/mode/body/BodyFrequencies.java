package io.github.tapwright.mode.body;

import io.github.tapwright.mode.HoleState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A body without losses in terms of frequencies alone: what its parts would do by themselves.
 *
 * <p>Divided by its masses, the model needs no kilogram and no cubic metre: every resonance follows from these
 * figures. Source: [ChristensenVistisen1980], the rest derived.
 *
 * @param top the top
 * @param back the back, empty if it is held still
 * @param helmholtzHz the air plug between rigid walls, f_h, greater than 0
 */
public record BodyFrequencies(PlateFrequencies top, Optional<PlateFrequencies> back, double helmholtzHz) {

    /** Refuses a hole that does not sound. */
    public BodyFrequencies {
        Positive.require(helmholtzHz, "Helmholtz frequency");
    }

    /**
     * The coupled resonances.
     *
     * @param hole open or covered
     * @return Hz, lowest first: one for each part that moves
     */
    public List<Double> resonancesHz(HoleState hole) {
        List<Piston> pistons = new ArrayList<>();
        pistons.add(unitMass(top));
        back.map(BodyFrequencies::unitMass).ifPresent(pistons::add);
        if (hole != HoleState.COVERED) {
            pistons.add(new Piston(1, 0, 0, 2 * Math.PI * helmholtzHz));
        }
        return new PoleSearch(pistons, 1)
                .poles().stream().map(Pole::frequencyHz).toList();
    }

    /**
     * The air plug on walls that give way as springs without mass, f_h/sqrt(1 + Σ f_a²/f_p0²).
     *
     * <p>It lies above the main air by 6 to 7 % in usual guitars, because real walls also have mass: a figure to
     * know, not to use.
     *
     * @return Hz
     */
    public double softWallHelmholtzHz() {
        double give = softness(top) + back.map(BodyFrequencies::softness).orElse(0.0);
        return helmholtzHz / Math.sqrt(1 + give);
    }

    private static double softness(PlateFrequencies plate) {
        double ratio = plate.airSpringHz() / plate.aloneHz();
        return ratio * ratio;
    }

    private static Piston unitMass(PlateFrequencies plate) {
        double omega = 2 * Math.PI * plate.aloneHz();
        return new Piston(1, 0, omega * omega, 2 * Math.PI * plate.airSpringHz());
    }
}
