package io.github.tapwright.chart;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import org.jfree.chart.ChartUtils;

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
    public static void write(Picture picture, Path file) throws IOException {
        write(Drawing.of(picture, Drawing.SCREEN_WIDTH), file);
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
        ChartUtils.writeScaledChartAsPNG(
                bytes, drawing.chart(), Drawing.SCREEN_WIDTH, drawing.height(), PNG_SCALE, PNG_SCALE);
        return bytes.toByteArray();
    }

    private static byte[] svg(Drawing drawing) {
        String svg = SvgPicture.of(drawing, Drawing.SCREEN_WIDTH, "t");
        return ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg).getBytes(StandardCharsets.UTF_8);
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
