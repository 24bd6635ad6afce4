package io.github.tapwright.mode.body;

/**
 * A top or back in terms of frequencies alone, which is what resonances can tell before anything has been weighed.
 *
 * @param aloneHz its own frequency without any air, f_p0, greater than 0
 * @param airSpringHz its frequency if the cavity's air were its only spring, f_a = sqrt(μA²/m)/2π, greater than 0
 */
public record PlateFrequencies(double aloneHz, double airSpringHz) {

    /** Refuses plates that cannot move. */
    public PlateFrequencies {
        Positive.require(aloneHz, "frequency of a plate");
        Positive.require(airSpringHz, "frequency of a plate on the air");
    }

    /** The same plate with springs and masses changed: stiffness by one factor, the air's by another, mass by a third. */
    PlateFrequencies times(double stiffness, double air, double mass) {
        return new PlateFrequencies(aloneHz * Math.sqrt(stiffness / mass), airSpringHz * Math.sqrt(air / mass));
    }
}
