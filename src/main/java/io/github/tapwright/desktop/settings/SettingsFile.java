package io.github.tapwright.desktop.settings;

import io.github.tapwright.chart.Light;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.desktop.part.Units;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Properties;

/** Keeps the settings in a file of plain words; a file that cannot be understood counts as none. */
public final class SettingsFile {

    private final Path file;

    /**
     * The settings of an archive.
     *
     * @param archive its folder
     */
    public SettingsFile(Path archive) {
        this.file = archive.resolve("desk.properties");
    }

    /**
     * Reads the settings.
     *
     * @return {@link DeskSettings#FIRST} where there are none, or none that can be understood
     */
    public DeskSettings read() {
        Properties words = new Properties();
        try (Reader reader = Files.newBufferedReader(file)) {
            words.load(reader);
            return new DeskSettings(
                    Light.valueOf(words.getProperty("light", Light.DAY.name())),
                    Units.valueOf(words.getProperty("temperature", Units.CELSIUS.name())),
                    number(words, "a4Hz", DeskSettings.FIRST.a4Hz()),
                    words.getProperty("openStrings", DeskSettings.FIRST.openStrings()),
                    Integer.parseInt(words.getProperty("frets", Integer.toString(DeskSettings.FIRST.fretCount()))),
                    new ShopWindow(
                            number(words, "driestPercent", ShopWindow.USUAL.lowestPercent()),
                            number(words, "dampestPercent", ShopWindow.USUAL.highestPercent())));
        } catch (IOException | IllegalArgumentException e) {
            return DeskSettings.FIRST;
        }
    }

    private static double number(Properties words, String name, double usual) {
        return Double.parseDouble(words.getProperty(name, Double.toString(usual)));
    }

    /**
     * Keeps the settings; the old ones hold until the new ones are whole.
     *
     * @param settings what to keep
     * @throws IOException if the folder cannot be written to
     */
    public void write(DeskSettings settings) throws IOException {
        Properties words = new Properties();
        words.setProperty("light", settings.light().name());
        words.setProperty("temperature", settings.units().name());
        words.setProperty("a4Hz", Double.toString(settings.a4Hz()));
        words.setProperty("openStrings", settings.openStrings());
        words.setProperty("frets", Integer.toString(settings.fretCount()));
        words.setProperty("driestPercent", Double.toString(settings.window().lowestPercent()));
        words.setProperty("dampestPercent", Double.toString(settings.window().highestPercent()));
        StringWriter text = new StringWriter();
        words.store(text, null);
        Path part = file.resolveSibling("desk.properties.part");
        Files.writeString(part, text.toString(), StandardCharsets.UTF_8);
        Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    }
}
