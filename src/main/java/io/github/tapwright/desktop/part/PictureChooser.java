package io.github.tapwright.desktop.part;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;
import javafx.stage.FileChooser;

/** Asks where a picture shall be written. */
public final class PictureChooser {

    private PictureChooser() {}

    /**
     * Asks.
     *
     * @param from the screen that asks
     * @param title of the window
     * @param name proposed name of the file, ends in ".png" or ".svg"
     * @return empty if the maker thought better of it
     */
    public static Optional<Path> ask(Node from, String title, String name) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.getExtensionFilters()
                .setAll(
                        new FileChooser.ExtensionFilter("PNG", "*.png"),
                        new FileChooser.ExtensionFilter("SVG", "*.svg"));
        chooser.setInitialFileName(name);
        return Optional.ofNullable(chooser.showSaveDialog(from.getScene().getWindow()))
                .map(File::toPath);
    }
}
