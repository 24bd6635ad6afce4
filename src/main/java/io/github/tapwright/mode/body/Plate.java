package io.github.tapwright.mode.body;

/**
 * A top or a back moving as one piston, as it would in a vacuum.
 *
 * @param massKilograms effective mass m, greater than 0
 * @param areaSquareMetres effective area A: volume moved for a displacement of 1 at the bridge, greater than 0
 * @param frequencyHz its own frequency without any air, greater than 0
 * @param q its own quality factor, greater than 1/2; infinite for no losses
 */
public record Plate(double massKilograms, double areaSquareMetres, double frequencyHz, double q) {

    /** Refuses plates that cannot move or sound. */
    public Plate {
        Positive.require(massKilograms, "mass of a plate");
        Positive.require(areaSquareMetres, "area of a plate");
        Positive.require(frequencyHz, "frequency of a plate");
        Positive.requireQ(q, "plate");
    }

    /**
     * A plate without losses.
     *
     * @param massKilograms effective mass
     * @param areaSquareMetres effective area
     * @param frequencyHz its own frequency
     * @return the plate
     */
    public static Plate lossless(double massKilograms, double areaSquareMetres, double frequencyHz) {
        return new Plate(massKilograms, areaSquareMetres, frequencyHz, Double.POSITIVE_INFINITY);
    }

    /**
     * Stiffness of the plate itself, k = m·(2πf)².
     *
     * @return N/m
     */
    public double stiffnessNewtonsPerMetre() {
        double omega = 2 * Math.PI * frequencyHz;
        return massKilograms * omega * omega;
    }

    Piston piston() {
        double resistance = 2 * Math.PI * frequencyHz * massKilograms / q;
        return new Piston(massKilograms, resistance, stiffnessNewtonsPerMetre(), areaSquareMetres);
    }
}
