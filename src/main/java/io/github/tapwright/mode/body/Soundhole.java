package io.github.tapwright.mode.body;

/**
 * A round soundhole and the plug of air that moves in it.
 *
 * <p>The plug is longer than the top is thick, because air beyond both faces moves along:
 * L′ = t + 1.7·a, the correction of a wide flange on both sides. Published fits use 1.6 to 1.9; a computed
 * Helmholtz frequency is therefore good to 3 to 6 %. Source: textbook, from memory, to be verified.
 *
 * @param radiusMetres a, greater than 0
 * @param thicknessMetres t of the top at the hole's edge, greater than 0
 * @param q quality factor of the air plug on the cavity's spring alone, greater than 1/2; infinite for no losses
 */
public record Soundhole(double radiusMetres, double thicknessMetres, double q) {

    private static final double END_CORRECTION = 1.7;

    /** Refuses holes that are none. */
    public Soundhole {
        Positive.require(radiusMetres, "radius of the soundhole");
        Positive.require(thicknessMetres, "thickness of the top");
        Positive.requireQ(q, "soundhole");
    }

    /**
     * Area of the hole, S = πa².
     *
     * @return m²
     */
    public double areaSquareMetres() {
        return Math.PI * radiusMetres * radiusMetres;
    }

    /**
     * Length of the moving plug, L′ = t + 1.7·a.
     *
     * @return m
     */
    public double effectiveLengthMetres() {
        return thicknessMetres + END_CORRECTION * radiusMetres;
    }

    /**
     * Mass of the plug, ρ·S·L′.
     *
     * @param air what moves
     * @return kg
     */
    public double airMassKilograms(Air air) {
        return air.densityKilogramsPerCubicMetre() * areaSquareMetres() * effectiveLengthMetres();
    }
}
