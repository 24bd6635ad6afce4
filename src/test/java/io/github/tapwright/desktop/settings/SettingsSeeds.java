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
                .put("half-a-spread.properties", "spreadQShare=0.05\n")
                .put("spread.properties", "spreadFrequencyShare=0.003\nspreadQShare=0.05\nspreadLevelDb=1.0\n")
                .put("no-light.properties", "light=\\uD800\n")
                .put("cut-escape.properties", "light=\\u00");
    }
}
