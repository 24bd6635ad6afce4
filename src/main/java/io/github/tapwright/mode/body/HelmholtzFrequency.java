package io.github.tapwright.mode.body;

/**
 * The air plug between rigid walls, computed from measures: f_h = c/2π·sqrt(S/(V·L′)), L′ = t + κ·a.
 *
 * <p>κ is 1.7 with a wide flange on both sides and π/2 for a thin wall (Rayleigh); published fits to guitars use
 * 1.6 to 1.9. That alone is worth 3 to 6 % of the result: never take it as exact. Source: textbook, from memory,
 * to be verified.
 *
 * @param radiusMetres a of the hole, greater than 0
 * @param thicknessMetres t of the top at the hole's edge, 0 or more
 * @param endCorrection κ, greater than 0
 */
public record HelmholtzFrequency(double radiusMetres, double thicknessMetres, double endCorrection) {

    /** Lowest κ of published fits. */
    static final double LEAST_CORRECTION = 1.6;

    /** Highest κ of published fits. */
    static final double GREATEST_CORRECTION = 1.9;

    /** Refuses holes without an opening. */
    public HelmholtzFrequency {
        Positive.require(radiusMetres, "radius of the soundhole");
        Positive.require(endCorrection, "end correction");
        if (!(thicknessMetres >= 0)) {
            throw new IllegalArgumentException("the top's thickness cannot be below zero, was " + thicknessMetres);
        }
    }

    /**
     * The frequency in a box.
     *
     * @param air in the box
     * @param volumeCubicMetres V, greater than 0
     * @return f_h, Hz
     */
    public double hz(Air air, double volumeCubicMetres) {
        return air.soundSpeedMetresPerSecond() / (2 * Math.PI) * Math.sqrt(conductivityMetres() / volumeCubicMetres);
    }

    /**
     * How easily air passes, S/L′.
     *
     * @return m
     */
    public double conductivityMetres() {
        double area = Math.PI * radiusMetres * radiusMetres;
        return area / (thicknessMetres + endCorrection * radiusMetres);
    }
}
