package io.github.tapwright.desktop.settings;

import io.github.tapwright.chart.Light;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.desktop.part.Units;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.Properties;

/** Keeps the settings in a file of plain words; a file that cannot be understood counts as none. */
public final class SettingsFile {

    private static final List<String> SPREAD = List.of("spreadFrequencyShare", "spreadQShare", "spreadLevelDb");

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
                            number(words, "dampestPercent", ShopWindow.USUAL.highestPercent())),
                    spread(words));
        } catch (IOException | IllegalArgumentException e) {
            return DeskSettings.FIRST;
        }
    }

    /** The three belong together; one alone is a file nobody understands. */
    private static Optional<SetUpSpread> spread(Properties words) {
        List<String> figures = SPREAD.stream()
                .flatMap(name -> Optional.ofNullable(words.getProperty(name)).stream())
                .toList();
        if (figures.isEmpty()) {
            return Optional.empty();
        }
        if (figures.size() < SPREAD.size()) {
            throw new IllegalArgumentException("of " + SPREAD + " some are missing");
        }
        return Optional.of(SetUpSpread.given(
                Double.parseDouble(figures.get(0)),
                Double.parseDouble(figures.get(1)),
                Double.parseDouble(figures.get(2))));
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
        settings.spread().ifPresent(s -> {
            words.setProperty(SPREAD.get(0), Double.toString(s.frequencyShare()));
            words.setProperty(SPREAD.get(1), Double.toString(s.qShare()));
            words.setProperty(SPREAD.get(2), Double.toString(s.levelDb()));
        });
        StringWriter text = new StringWriter();
        words.store(text, null);
        Path part = file.resolveSibling("desk.properties.part");
        Files.writeString(part, text.toString(), StandardCharsets.UTF_8);
        Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    }
}
