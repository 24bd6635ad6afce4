package io.github.tapwright.desktop.settings;

import io.github.tapwright.chart.Light;
import io.github.tapwright.desktop.part.Units;
import io.github.tapwright.desktop.work.Notices;
import java.io.IOException;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The settings in force; a change is kept at once. */
public final class SettingsModel {

    private final SettingsFile file;
    private final Notices notices;
    private final ReadOnlyObjectWrapper<DeskSettings> now;
    private final ReadOnlyObjectWrapper<Light> light;

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
        now.addListener((o, before, after) -> light.set(after.light()));
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
