package io.github.tapwright.desktop.sitting;

import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.sitting.live.LevelNow;
import io.github.tapwright.statistics.Figures;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.VBox;

/** The input's level as a bar with its figures, and what to mend about it. */
final class LevelMeterBar {

    private static final double LOWEST_DBFS = -72;

    private final ProgressBar bar = new ProgressBar(0);
    private final Label figures = new Label();
    private final Label hints = Parts.paragraph("");
    private final VBox node;

    LevelMeterBar() {
        bar.setAccessibleText("Input level");
        bar.setPrefWidth(260);
        node = new VBox(4, Parts.row(new Label("Input level"), bar, figures), hints);
    }

    Node node() {
        return node;
    }

    void show(Optional<LevelNow> level) {
        double peakDbfs = level.flatMap(LevelNow::peakDbfs).orElse(LOWEST_DBFS);
        bar.setProgress(Math.max(0, Math.min(1, 1 - peakDbfs / LOWEST_DBFS)));
        figures.setText(level.map(LevelMeterBar::words).orElse(""));
        boolean clipped = level.map(LevelNow::clipped).orElse(false);
        hints.setText(level.map(l -> String.join(" ", l.hints())).orElse(""));
        hints.getStyleClass().remove("bad");
        if (clipped) {
            hints.getStyleClass().add("bad");
        }
    }

    private static String words(LevelNow level) {
        return "peak " + decibels(level.peakDbfs()) + " dBFS, room " + decibels(level.noiseFloorDbfs()) + " dBFS"
                + (level.clipped() ? "  CLIPPED" : "");
    }

    private static String decibels(Optional<Double> level) {
        return level.map(db -> Figures.text(db, 0)).orElse("…");
    }
}
