package io.github.tapwright.desktop.settings;

import io.github.tapwright.chart.Light;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.desktop.part.Units;
import io.github.tapwright.note.NoteSettings;
import io.github.tapwright.note.run.Tuning;
import java.util.Optional;

/**
 * How the maker likes the desk, how the guitars are tuned that come to it, and what comparisons count with.
 *
 * @param light light or dark
 * @param units of temperatures
 * @param a4Hz tuning note of note names, 380 to 480 Hz
 * @param openStrings the open strings from the lowest up, such as {@link Tuning#CLASSICAL_NOTES}
 * @param fretCount highest fret, 0 to 36
 * @param window the humidity the shop is held at
 * @param spread the maker's own figures of how far setting up again moves others; empty for those of the bench's study
 */
public record DeskSettings(
        Light light,
        Units units,
        double a4Hz,
        String openStrings,
        int fretCount,
        ShopWindow window,
        Optional<SetUpSpread> spread) {

    /** To begin with: by day, °C, the standard tuning note [ISO16], a classical guitar, the usual window, the study's spread. */
    public static final DeskSettings FIRST = new DeskSettings(
            Light.DAY,
            Units.CELSIUS,
            NoteSettings.STANDARD.a4Hz(),
            Tuning.CLASSICAL_NOTES,
            Tuning.CLASSICAL.fretCount(),
            ShopWindow.USUAL,
            Optional.empty());

    /** Refuses what no note could be read by. */
    public DeskSettings {
        NoteSettings.STANDARD.withA4(a4Hz);
        Tuning.named(openStrings, a4Hz, fretCount);
    }

    /**
     * What the open strings sound.
     *
     * @return the tuning that runs of notes and plucks are read by
     */
    public Tuning tuning() {
        return Tuning.named(openStrings, a4Hz, fretCount);
    }

    /**
     * The same with the other light.
     *
     * @return a copy
     */
    public DeskSettings inOtherLight() {
        return new DeskSettings(
                light == Light.DAY ? Light.NIGHT : Light.DAY, units, a4Hz, openStrings, fretCount, window, spread);
    }

    /**
     * The same with other units.
     *
     * @param other the units
     * @return a copy
     */
    public DeskSettings in(Units other) {
        return new DeskSettings(light, other, a4Hz, openStrings, fretCount, window, spread);
    }

    /**
     * The same for guitars tuned otherwise.
     *
     * @param otherA4Hz tuning note, 380 to 480 Hz
     * @param otherStrings the open strings from the lowest up
     * @param otherFretCount highest fret, 0 to 36
     * @return a copy
     */
    public DeskSettings tuned(double otherA4Hz, String otherStrings, int otherFretCount) {
        return new DeskSettings(light, units, otherA4Hz, otherStrings, otherFretCount, window, spread);
    }

    /**
     * The same for another room.
     *
     * @param otherWindow the humidity the shop is held at
     * @return a copy
     */
    public DeskSettings within(ShopWindow otherWindow) {
        return new DeskSettings(light, units, a4Hz, openStrings, fretCount, otherWindow, spread);
    }

    /**
     * The same on a bench that scatters otherwise.
     *
     * @param otherSpread the maker's own figures; empty for those of the bench's study
     * @return a copy
     */
    public DeskSettings spreading(Optional<SetUpSpread> otherSpread) {
        return new DeskSettings(light, units, a4Hz, openStrings, fretCount, window, otherSpread);
    }
}
