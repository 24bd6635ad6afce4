package io.github.tapwright.climate;

/**
 * By what dampness is counted.
 *
 * <p>What the wood of a top does at equilibrium follows from its elasticity (about −1.5 to −2 % per per cent of moisture) and its
 * mass (about +1 %): f falls by about 1.25 to 1.5 % per per cent of moisture, or 0.2 to 0.25 % per point of relative humidity. This is
 * an estimate from bare spruce, not measured; a finished closed box does less. The uncertainty assumed lets anything from nothing
 * to twice as much pass within 95 %.
 */
public enum HumidityScale {
    /** Points of relative humidity of the room. */
    RELATIVE_HUMIDITY(-0.225, 0.115, 5),
    /** Per cent of equilibrium moisture content of wood, {@link WoodMoisture}. */
    WOOD_MOISTURE(-1.375, 0.70, 0.8);

    final double assumedPercentPerPoint;
    final double assumedUncertainty;
    final double rangeNeeded;

    HumidityScale(double assumedPercentPerPoint, double assumedUncertainty, double rangeNeeded) {
        this.assumedPercentPerPoint = assumedPercentPerPoint;
        this.assumedUncertainty = assumedUncertainty;
        this.rangeNeeded = rangeNeeded;
    }
}
