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

    /** Where the air lies. */
    public enum Place {
        /** Within the window, its ends included. */
        INSIDE,
        /** Below it. */
        TOO_DRY,
        /** Above it. */
        TOO_DAMP
    }

    /**
     * What was found.
     *
     * @param place where the air lies
     * @param pointsOutside how many points of relative humidity beyond the nearer end; 0 inside
     * @param window the window asked for
     */
    public record Verdict(Place place, double pointsOutside, ShopWindow window) {}

    /**
     * Judges.
     *
     * @param climate the air
     * @return the verdict
     */
    public Verdict judge(RoomClimate climate) {
        double humidity = climate.relativeHumidityPercent();
        if (humidity < lowestPercent) {
            return new Verdict(Place.TOO_DRY, lowestPercent - humidity, this);
        }
        return humidity > highestPercent
                ? new Verdict(Place.TOO_DAMP, humidity - highestPercent, this)
                : new Verdict(Place.INSIDE, 0, this);
    }
}
