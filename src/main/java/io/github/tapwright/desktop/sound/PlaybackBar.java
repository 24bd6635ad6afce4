package io.github.tapwright.desktop.sound;

import io.github.tapwright.desktop.part.Parts;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Level, stop, and the caution when it is due; every screen that plays has one, of the same model. */
public final class PlaybackBar {

    private final PlaybackModel model;
    private final VBox node = new VBox(6);
    private final Label level = new Label();
    private final Label playing = new Label();
    private final HBox caution;
    private final Button heard;

    /**
     * A bar.
     *
     * @param model what is heard
     */
    public PlaybackBar(PlaybackModel model) {
        this.model = model;
        Label words = Parts.paragraph(PlaybackModel.CAUTION);
        words.setAccessibleText("Caution: " + PlaybackModel.CAUTION);
        HBox.setHgrow(words, Priority.ALWAYS);
        this.heard = Parts.button("I turned it down: play", "Plays at a low level", model::acceptCaution);
        this.caution = Parts.row(words, heard, Parts.button("Not now", "Plays nothing", model::decline));
        caution.getStyleClass().add("caution");
        playing.getStyleClass().add("quiet");
        node.getChildren().add(controls());
        model.levelDb().addListener((o, before, after) -> showLevel());
        model.playing().addListener((o, before, after) -> showPlaying(after));
        model.waiting().addListener((o, before, after) -> showCaution(after));
        showLevel();
        showPlaying(model.playing().get());
        showCaution(model.waiting().get());
    }

    private Node controls() {
        Slider slider = new Slider(PlaybackModel.LEAST_DB, 0, model.levelDb().get());
        slider.valueProperty().bindBidirectional(model.levelDb());
        slider.setBlockIncrement(1);
        slider.setPrefWidth(150);
        slider.setAccessibleText("Playback level in dB");
        level.setLabelFor(slider);
        level.setMinWidth(110);
        return Parts.row(level, slider, Parts.button("Stop", "Stops the sound", model::stop), playing);
    }

    /**
     * The bar.
     *
     * @return to be put on a screen
     */
    public Node node() {
        return node;
    }

    private void showLevel() {
        level.setText(model.levelWords());
    }

    private void showPlaying(Optional<String> words) {
        playing.setText(words.map(w -> "sounds: " + w).orElse(""));
    }

    private void showCaution(Optional<PlaybackModel.Asked> waiting) {
        node.getChildren().remove(caution);
        if (waiting.isPresent()) {
            node.getChildren().add(0, caution);
            if (node.getScene() != null) {
                heard.requestFocus();
            }
        }
    }
}
