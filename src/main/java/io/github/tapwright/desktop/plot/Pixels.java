package io.github.tapwright.desktop.plot;

import io.github.tapwright.chart.Raster;
import java.nio.IntBuffer;
import javafx.scene.Node;
import javafx.scene.image.Image;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;

/** Brings drawn pixels to the screen. */
final class Pixels {

    private Pixels() {}

    /** Pixels to a unit on the screen a node is shown on; 1 before it is shown. */
    static double scaleOf(Node node) {
        boolean shown = node.getScene() != null && node.getScene().getWindow() != null;
        return shown ? node.getScene().getWindow().getOutputScaleX() : 1;
    }

    static Image image(Raster raster) {
        IntBuffer buffer = IntBuffer.allocate(raster.width() * raster.height());
        raster.copyTo(buffer.array());
        return new WritableImage(
                new PixelBuffer<>(raster.width(), raster.height(), buffer, PixelFormat.getIntArgbPreInstance()));
    }
}
