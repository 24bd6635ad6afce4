package io.github.tapwright.desktop.plot;

import io.github.tapwright.chart.Light;
import io.github.tapwright.chart.Picture;
import io.github.tapwright.chart.Raster;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Region;

/** Shows a picture laid out for the room there is; asks for more where it would become too small to read. */
public final class PictureFrame extends Region {

    /** A picture drawn flatter than this share of its usual height has no room for its lines. */
    private static final double FLATTEST = 0.48;

    private static final double USUAL_WIDTH = 1000;

    private final ImageView view = new ImageView();
    private final ObservableValue<Light> light;
    private final String name;
    private Optional<Picture> picture = Optional.empty();

    /**
     * A frame without a picture.
     *
     * @param name for screen readers
     * @param light on which paper to draw
     */
    public PictureFrame(String name, ObservableValue<Light> light) {
        this.light = light;
        this.name = name;
        setAccessibleText(name);
        view.setManaged(false);
        getChildren().add(view);
        setMinWidth(300);
        light.addListener((o, before, after) -> redraw());
        widthProperty().addListener((o, before, after) -> redraw());
        heightProperty().addListener((o, before, after) -> redraw());
    }

    /**
     * Shows another picture.
     *
     * @param next what to show; empty for none
     * @param words what it shows, for screen readers
     */
    public void show(Optional<? extends Picture> next, String words) {
        picture = next.map(p -> p);
        setAccessibleText(words.isEmpty() ? name : name + ": " + words);
        setMinHeight(picture.map(p -> FLATTEST * Raster.usualHeight(p)).orElse(0.0));
        redraw();
    }

    private void redraw() {
        if (picture.isEmpty() || getWidth() < 1 || getHeight() < 1) {
            view.setImage(null);
            return;
        }
        view.setImage(Pixels.image(
                Raster.filling(picture.get(), getWidth(), getHeight(), Pixels.scaleOf(this), light.getValue())));
        view.setFitWidth(getWidth());
        view.setFitHeight(getHeight());
    }

    @Override
    protected double computePrefHeight(double width) {
        return getMinHeight();
    }

    @Override
    protected double computePrefWidth(double height) {
        return USUAL_WIDTH;
    }
}
