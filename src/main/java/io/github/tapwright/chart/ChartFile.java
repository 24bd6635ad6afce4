package io.github.tapwright.chart;

import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import org.jfree.chart.ChartUtils;
import org.jfree.svg.SVGGraphics2D;

/** Writes pictures to files. */
public final class ChartFile {

    /** Twice the pixels, so that letters are sharp on paper and on fine screens. */
    private static final int PNG_SCALE = 2;

    private ChartFile() {}

    /**
     * Refuses a file name no picture can be written under, before any work is done for it.
     *
     * @param file where a picture shall go
     * @throws IllegalArgumentException if the name ends in neither ".png" nor ".svg"
     */
    public static void requireKnownEnding(Path file) {
        if (!isPng(file) && !isSvg(file)) {
            throw new IllegalArgumentException(file + ": a picture's file name must end in .png or .svg");
        }
    }

    /**
     * Writes a picture; a file that is there already is replaced once the new one is whole.
     *
     * @param picture what to show
     * @param file ends in ".png" or ".svg"
     * @throws IllegalArgumentException if it ends otherwise
     * @throws IOException if the file cannot be written
     */
    public static void write(ResponsePicture picture, Path file) throws IOException {
        write(new ResponseChart(picture), file);
    }

    /**
     * Writes a picture; a file that is there already is replaced once the new one is whole.
     *
     * @param picture what to show
     * @param file ends in ".png" or ".svg"
     * @throws IllegalArgumentException if it ends otherwise
     * @throws IOException if the file cannot be written
     */
    public static void write(LevelPicture picture, Path file) throws IOException {
        write(new LevelChart(picture), file);
    }

    /**
     * Writes a picture; a file that is there already is replaced once the new one is whole.
     *
     * @param picture what to show
     * @param file ends in ".png" or ".svg"
     * @throws IllegalArgumentException if it ends otherwise
     * @throws IOException if the file cannot be written
     */
    public static void write(FingerboardPicture picture, Path file) throws IOException {
        write(new FingerboardChart(picture), file);
    }

    /**
     * Writes a picture; a file that is there already is replaced once the new one is whole.
     *
     * @param picture what to show
     * @param file ends in ".png" or ".svg"
     * @throws IllegalArgumentException if it ends otherwise
     * @throws IOException if the file cannot be written
     */
    public static void write(NotePicture picture, Path file) throws IOException {
        write(new NoteChart(picture), file);
    }

    /**
     * Writes a picture; a file that is there already is replaced once the new one is whole.
     *
     * @param picture what to show
     * @param file ends in ".png" or ".svg"
     * @throws IllegalArgumentException if it ends otherwise
     * @throws IOException if the file cannot be written
     */
    public static void write(GroupPicture picture, Path file) throws IOException {
        write(new GroupChart(picture), file);
    }

    /**
     * Writes a picture; a file that is there already is replaced once the new one is whole.
     *
     * @param picture what to show
     * @param file ends in ".png" or ".svg"
     * @throws IllegalArgumentException if it ends otherwise
     * @throws IOException if the file cannot be written
     */
    public static void write(TrendPicture picture, Path file) throws IOException {
        write(new TrendChart(picture), file);
    }

    private static void write(Drawing drawing, Path file) throws IOException {
        requireKnownEnding(file);
        byte[] bytes = isPng(file) ? png(drawing) : svg(drawing);
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try {
            Files.write(part, bytes);
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static byte[] png(Drawing drawing) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ChartUtils.writeScaledChartAsPNG(bytes, drawing.chart(), Drawing.WIDTH, drawing.height(), PNG_SCALE, PNG_SCALE);
        return bytes.toByteArray();
    }

    private static byte[] svg(Drawing drawing) {
        SVGGraphics2D g2 = new SVGGraphics2D(Drawing.WIDTH, drawing.height());
        g2.setDefsKeyPrefix("t");
        drawing.chart().draw(g2, new Rectangle2D.Double(0, 0, Drawing.WIDTH, drawing.height()));
        return ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + g2.getSVGElement()).getBytes(StandardCharsets.UTF_8);
    }

    private static boolean isPng(Path file) {
        return ending(file).endsWith(".png");
    }

    private static boolean isSvg(Path file) {
        return ending(file).endsWith(".svg");
    }

    private static String ending(Path file) {
        return file.toString().toLowerCase(Locale.ROOT);
    }
}
