package io.github.tapwright.desktop.settings;

import io.github.tapwright.chart.Light;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.desktop.part.Units;

/**
 * How the maker likes the desk.
 *
 * @param light light or dark
 * @param units of temperatures
 * @param a4Hz tuning note of note names, 380 to 500 Hz
 * @param window the humidity the shop is held at
 */
public record DeskSettings(Light light, Units units, double a4Hz, ShopWindow window) {

    /** To begin with: by day, °C, the standard tuning note [ISO16], the usual window. */
    public static final DeskSettings FIRST = new DeskSettings(Light.DAY, Units.CELSIUS, 440, ShopWindow.USUAL);

    private static final double LOWEST_A4_HZ = 380;
    private static final double HIGHEST_A4_HZ = 500;

    /** Refuses a tuning note no guitar is tuned to. */
    public DeskSettings {
        if (!(a4Hz >= LOWEST_A4_HZ && a4Hz <= HIGHEST_A4_HZ)) {
            throw new IllegalArgumentException(
                    "no guitar is tuned to " + a4Hz + " Hz; type a tuning note from 380 to 500 Hz");
        }
    }

    /**
     * The same with the other light.
     *
     * @return a copy
     */
    public DeskSettings inOtherLight() {
        return new DeskSettings(light == Light.DAY ? Light.NIGHT : Light.DAY, units, a4Hz, window);
    }

    /**
     * The same with other units.
     *
     * @param other the units
     * @return a copy
     */
    public DeskSettings in(Units other) {
        return new DeskSettings(light, other, a4Hz, window);
    }

    /**
     * The same for another tuning and another room.
     *
     * @param otherA4Hz tuning note, 380 to 500 Hz
     * @param otherWindow the humidity the shop is held at
     * @return a copy
     */
    public DeskSettings with(double otherA4Hz, ShopWindow otherWindow) {
        return new DeskSettings(light, units, otherA4Hz, otherWindow);
    }
}
