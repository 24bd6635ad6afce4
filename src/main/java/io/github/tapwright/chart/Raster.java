package io.github.tapwright.chart;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.function.Consumer;

/**
 * A picture as pixels, to be shown in a window.
 *
 * <p>Every pixel is one int, 0xAARRGGBB, row by row from the top; all are opaque.
 */
public final class Raster {

    private final int width;
    private final int height;
    private final int[] pixels;

    private Raster(int width, int height, int[] pixels) {
        this.width = width;
        this.height = height;
        this.pixels = pixels;
    }

    /**
     * Lays a picture out for a window and draws it.
     *
     * @param picture what to show
     * @param width width in the window's own units, at least 1; the height follows from the picture
     * @param scale pixels to a unit, 1 on plain screens, more on fine ones
     * @param light on light or dark paper
     * @return the pixels
     */
    public static Raster of(Picture picture, double width, double scale, Light light) {
        Drawing drawing = Drawing.of(picture, Drawing.SCREEN_WIDTH);
        double enlarged = width * scale / Drawing.SCREEN_WIDTH;
        int columns = Math.max(1, (int) Math.round(width * scale));
        int rows = Math.max(1, (int) Math.round(drawing.height() * enlarged));
        return draw(columns, rows, light, g2 -> {
            g2.scale(enlarged, enlarged);
            drawing.chart().draw(g2, new Rectangle2D.Double(0, 0, Drawing.SCREEN_WIDTH, drawing.height()));
        });
    }

    /**
     * Lays a picture out for a frame of a given size, letters as large as on the rest of the screen, and draws it.
     *
     * @param picture what to show
     * @param width width in the window's own units, at least 1
     * @param height height in the same units, at least 1; better not much less than {@link #usualHeight}
     * @param scale pixels to a unit, 1 on plain screens, more on fine ones
     * @param light on light or dark paper
     * @return the pixels
     */
    public static Raster filling(Picture picture, double width, double height, double scale, Light light) {
        Drawing drawing = Drawing.of(picture, Drawing.SCREEN_WIDTH);
        int columns = Math.max(1, (int) Math.round(width * scale));
        int rows = Math.max(1, (int) Math.round(height * scale));
        return draw(columns, rows, light, g2 -> {
            g2.scale(scale, scale);
            drawing.chart().draw(g2, new Rectangle2D.Double(0, 0, width, height));
        });
    }

    /**
     * How high a picture likes to be on a screen.
     *
     * @param picture what to show
     * @return height in the window's own units
     */
    public static double usualHeight(Picture picture) {
        return Drawing.of(picture, Drawing.SCREEN_WIDTH).height();
    }

    /** Draws on white paper and turns the light down afterwards where asked. */
    static Raster draw(int columns, int rows, Light light, Consumer<Graphics2D> painter) {
        BufferedImage image = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_RGB);
        Graphics2D g2 = image.createGraphics();
        try {
            g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g2.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g2.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            painter.accept(g2);
        } finally {
            g2.dispose();
        }
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        light.apply(pixels);
        return new Raster(columns, rows, pixels);
    }

    /**
     * How many pixels lie side by side.
     *
     * @return at least 1
     */
    public int width() {
        return width;
    }

    /**
     * How many pixels lie above each other.
     *
     * @return at least 1
     */
    public int height() {
        return height;
    }

    /**
     * The pixels.
     *
     * @return a copy, width times height long
     */
    public int[] pixels() {
        return pixels.clone();
    }

    /**
     * Copies the pixels to where a window shows them, which spares a second array for every frame.
     *
     * @param target at least width times height long
     */
    public void copyTo(int[] target) {
        System.arraycopy(pixels, 0, target, 0, pixels.length);
    }
}
