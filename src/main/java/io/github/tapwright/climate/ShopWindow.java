package io.github.tapwright.climate;

/**
 * The humidity a workshop keeps.
 *
 * <p>The usual 40 to 50 % is common practice in workshops, no source. Far drier air shrinks wood across the grain and can crack a top;
 * far damper air swells it and softens old glue.
 *
 * @param lowestPercent relative humidity, above 0
 * @param highestPercent relative humidity, above the lowest, up to 100
 */
public record ShopWindow(double lowestPercent, double highestPercent) {

    /** 40 to 50 %. */
    public static final ShopWindow USUAL = new ShopWindow(40, 50);

    /** Refuses what is no window. */
    public ShopWindow {
        if (!(lowestPercent > 0 && lowestPercent < highestPercent && highestPercent <= 100)) {
            throw new IllegalArgumentException("a window of humidity runs upwards between 0 and 100 %, got "
                    + lowestPercent + " to " + highestPercent);
        }
    }

    /**
     * Whether air lies outside.
     *
     * @param percent relative humidity
     * @return false at either end
     */
    public boolean isOutside(double percent) {
        return percent < lowestPercent || percent > highestPercent;
    }
}
