package io.github.tapwright.mode.body;

/**
 * The air in and around the body.
 *
 * @param densityKilogramsPerCubicMetre ρ, greater than 0
 * @param soundSpeedMetresPerSecond c, greater than 0
 */
public record Air(double densityKilogramsPerCubicMetre, double soundSpeedMetresPerSecond) {

    /** Round values of a mild room: 1.2 kg/m³ and 343 m/s. */
    public static final Air ROUND = new Air(1.2, 343);

    /** Refuses air that is none. */
    public Air {
        Positive.require(densityKilogramsPerCubicMetre, "density of air");
        Positive.require(soundSpeedMetresPerSecond, "speed of sound");
    }

    /**
     * Stiffness of enclosed air, μ = ρc²/V: pressure for a change of volume.
     *
     * @param volumeCubicMetres V, greater than 0
     * @return μ, Pa/m³
     */
    public double stiffnessPascalsPerCubicMetre(double volumeCubicMetres) {
        return densityKilogramsPerCubicMetre
                * soundSpeedMetresPerSecond
                * soundSpeedMetresPerSecond
                / volumeCubicMetres;
    }
}
