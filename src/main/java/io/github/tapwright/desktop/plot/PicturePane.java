package io.github.tapwright.desktop.plot;

import io.github.tapwright.chart.Light;
import io.github.tapwright.chart.Picture;
import io.github.tapwright.chart.Raster;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Region;

/** Shows a picture as wide as there is room; its height follows. */
public final class PicturePane extends Region {

    private static final double WIDEST = 1400;

    private final ImageView view = new ImageView();
    private final ObservableValue<Light> light;
    private Optional<Picture> picture = Optional.empty();
    private double drawnWidth;
    private double drawnHeight;

    /**
     * A pane without a picture.
     *
     * @param name for screen readers
     * @param light on which paper to draw
     */
    public PicturePane(String name, ObservableValue<Light> light) {
        this.light = light;
        setAccessibleText(name);
        getChildren().add(view);
        light.addListener((o, before, after) -> redraw());
        widthProperty().addListener((o, before, after) -> redraw());
    }

    /**
     * Shows another picture.
     *
     * @param next what to show; empty for none
     */
    public void show(Optional<? extends Picture> next) {
        picture = next.map(p -> p);
        redraw();
    }

    private void redraw() {
        drawnWidth = Math.min(WIDEST, getWidth());
        if (picture.isEmpty() || drawnWidth < 1) {
            view.setImage(null);
            drawnHeight = 0;
        } else {
            double scale = Pixels.scaleOf(this);
            Raster raster = Raster.of(picture.get(), drawnWidth, scale, light.getValue());
            drawnHeight = raster.height() / scale;
            view.setImage(Pixels.image(raster));
            view.setFitWidth(drawnWidth);
            view.setFitHeight(drawnHeight);
        }
        requestLayout();
        if (getParent() != null) {
            getParent().requestLayout();
        }
    }

    @Override
    protected double computePrefHeight(double width) {
        return drawnHeight;
    }

    @Override
    protected double computeMinHeight(double width) {
        return drawnHeight;
    }

    @Override
    protected double computePrefWidth(double height) {
        return 600;
    }

    @Override
    protected void layoutChildren() {
        view.relocate(0, 0);
    }
}
