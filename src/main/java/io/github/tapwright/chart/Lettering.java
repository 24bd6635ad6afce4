package io.github.tapwright.chart;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * The letters of every picture and report: DejaVu Sans Condensed, which comes with the program.
 *
 * <p>A font of its own makes a picture come out the same on every machine, and may be embedded in what the workshop hands on. Its licence
 * lies beside it.
 */
public enum Lettering {
    /** Upright, normal weight. */
    PLAIN("DejaVuSansCondensed.ttf"),
    /** Upright, bold. */
    BOLD("DejaVuSansCondensed-Bold.ttf");

    /** The family's name. */
    public static final String FAMILY = "DejaVu Sans Condensed";

    /** The family and what may stand in for it where a reader's machine draws the letters. */
    public static final String FAMILIES = "\"DejaVu Sans Condensed\",\"DejaVu Sans\",Verdana,sans-serif";

    private final String resource;

    Lettering(String resource) {
        this.resource = resource;
    }

    /**
     * The font's file.
     *
     * @return a stream the caller closes
     */
    public InputStream open() {
        InputStream in = Lettering.class.getResourceAsStream(resource);
        if (in == null) {
            throw new IllegalStateException("the program lacks its font " + resource);
        }
        return in;
    }

    static Font plain(float size) {
        return Loaded.PLAIN_FONT.deriveFont(size);
    }

    static Font bold(float size) {
        return Loaded.BOLD_FONT.deriveFont(Font.BOLD, size);
    }

    /** Read once, and only where something is drawn. */
    private static final class Loaded {

        static final Font PLAIN_FONT = font(PLAIN);
        static final Font BOLD_FONT = font(BOLD);

        private static Font font(Lettering lettering) {
            try (InputStream in = lettering.open()) {
                return Font.createFont(Font.TRUETYPE_FONT, in);
            } catch (FontFormatException e) {
                throw new IllegalStateException("the program's font " + lettering + " is damaged", e);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
