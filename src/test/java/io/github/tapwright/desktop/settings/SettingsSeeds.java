package io.github.tapwright.desktop.settings;

import io.github.tapwright.fuzz.SeedFolder;
import java.io.IOException;
import java.nio.file.Path;

/** Seeds of the desk's settings. */
public final class SettingsSeeds {

    private SettingsSeeds() {}

    public static void write(Path resources) throws IOException {
        new SeedFolder(resources, SettingsFileFuzzTest.class, "settingsComeOfAnything")
                .put(
                        "desk.properties",
                        "light=NIGHT\ntemperature=CELSIUS\na4Hz=442\ndriestPercent=40\ndampestPercent=50\n")
                .put("no-number.properties", "a4Hz=NaN\n")
                .put("no-window.properties", "driestPercent=Infinity\n")
                .put("no-light.properties", "light=\\uD800\n")
                .put("cut-escape.properties", "light=\\u00");
    }
}
