package io.github.tapwright.desktop.settings;

import io.github.tapwright.chart.Light;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.desktop.part.Units;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.instrument.RefusedEntryException;
import java.io.IOException;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The settings in force; a change is kept at once. */
public final class SettingsModel {

    private final SettingsFile file;
    private final Notices notices;
    private final ReadOnlyObjectWrapper<DeskSettings> now;
    private final ReadOnlyObjectWrapper<Light> light;
    private final ReadOnlyDoubleWrapper a4Hz;

    /**
     * The settings of an archive.
     *
     * @param file where they are kept
     * @param notices told where they cannot be
     */
    public SettingsModel(SettingsFile file, Notices notices) {
        this.file = file;
        this.notices = notices;
        this.now = new ReadOnlyObjectWrapper<>(file.read());
        this.light = new ReadOnlyObjectWrapper<>(now.get().light());
        this.a4Hz = new ReadOnlyDoubleWrapper(now.get().a4Hz());
        now.addListener((o, before, after) -> {
            light.set(after.light());
            a4Hz.set(after.a4Hz());
        });
    }

    /**
     * All of them.
     *
     * @return changes with {@link #change}
     */
    public ReadOnlyObjectProperty<DeskSettings> now() {
        return now.getReadOnlyProperty();
    }

    /**
     * The light pictures are drawn for.
     *
     * @return changes with the settings
     */
    public ReadOnlyObjectProperty<Light> light() {
        return light.getReadOnlyProperty();
    }

    /**
     * How temperatures are written.
     *
     * @return the units in force
     */
    public Units units() {
        return now.get().units();
    }

    /**
     * The tuning note of note names.
     *
     * @return changes with the settings
     */
    public ReadOnlyDoubleProperty a4Hz() {
        return a4Hz.getReadOnlyProperty();
    }

    /**
     * The humidity the shop is held at.
     *
     * @return the window in force
     */
    public ShopWindow window() {
        return now.get().window();
    }

    /** What the maker typed on the workshop's screen: tuning note, open strings, frets, and the air of the shop. */
    record Typed(String a4, String openStrings, String frets, String driest, String dampest) {}

    /**
     * Takes tuning and window as they were typed, or says what is wrong with them.
     *
     * @param typed word for word
     */
    void take(Typed typed) {
        DeskSettings before = now.get();
        try {
            change(before.tuned(
                            typed("the tuning note", typed.a4()),
                            typed.openStrings().strip(),
                            whole("the number of frets", typed.frets()))
                    .within(new ShopWindow(
                            typed("the driest air", typed.driest()), typed("the dampest air", typed.dampest()))));
            notices.say("Kept the settings", () -> change(before));
        } catch (IllegalArgumentException e) {
            notices.trouble(String.valueOf(e.getMessage()));
        }
    }

    private static int whole(String what, String words) {
        double figure = typed(what, words);
        if (figure != Math.rint(figure)) {
            throw new RefusedEntryException(what + " is not a whole number; type one such as 19");
        }
        return (int) figure;
    }

    private static double typed(String what, String words) {
        return Units.figure(what, words)
                .orElseThrow(() -> new RefusedEntryException(what + " is missing; type a number"));
    }

    /**
     * Takes other settings.
     *
     * @param next hold from now on
     */
    public void change(DeskSettings next) {
        now.set(next);
        try {
            file.write(next);
        } catch (IOException e) {
            notices.failed("keeping the settings", e);
        }
    }
}
