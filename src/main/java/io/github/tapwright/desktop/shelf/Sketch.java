package io.github.tapwright.desktop.shelf;

import java.util.List;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Polyline;

/** A response curve the size of a stamp: enough to know an instrument by, not to read a figure from. */
final class Sketch extends Pane {

    private static final double WIDTH = 120;
    private static final double HEIGHT = 40;
    private static final double DEEPEST_DB = -45;

    Sketch(List<Double> levelsDb) {
        setPrefSize(WIDTH, HEIGHT);
        setMinSize(WIDTH, HEIGHT);
        setMaxSize(WIDTH, HEIGHT);
        Polyline line = new Polyline();
        line.getStyleClass().add("sketch");
        for (int i = 0; i < levelsDb.size(); i++) {
            double level = Math.max(DEEPEST_DB, levelsDb.get(i));
            line.getPoints()
                    .addAll(WIDTH * i / Math.max(1, levelsDb.size() - 1), 2 + (HEIGHT - 4) * level / DEEPEST_DB);
        }
        getChildren().add(line);
    }
}
