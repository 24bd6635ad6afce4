package io.github.tapwright.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.ValueAxis;

/**
 * Colours, lines and letters of every picture.
 *
 * <p>The colours stay apart for readers with any common kind of colour blindness. Source: [OkabeIto2008].
 */
final class Look {

    static final Color INK = new Color(0x22, 0x22, 0x22);
    static final Color QUIET_INK = new Color(0x66, 0x66, 0x66);
    static final Color GRID = new Color(0xE4, 0xE4, 0xE4);
    static final Color PAPER = Color.WHITE;

    /** Laid under letters that stand on a curve. */
    static final Color VEIL = new Color(255, 255, 255, 200);

    static final Font TITLE = Lettering.bold(18);
    static final Font SUBTITLE = Lettering.plain(12);
    static final Font AXIS = Lettering.plain(12);
    static final Font NAME = Lettering.bold(12);
    static final Font FIGURE = Lettering.plain(11);

    static final Stroke HAIRLINE = new BasicStroke(0.6f);

    /** Keeps a fine line visible on any colour. */
    static final Stroke HALO = new BasicStroke(3.4f);

    static final Stroke FINE = new BasicStroke(1.1f);

    private static final List<Color> COLOURS = List.of(
            new Color(0x00, 0x72, 0xB2),
            new Color(0xD5, 0x5E, 0x00),
            new Color(0x00, 0x9E, 0x73),
            new Color(0xCC, 0x79, 0xA7),
            INK);

    private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);

    private Look() {}

    /** Width of a text, pixels. */
    static double width(Font font, String text) {
        return font.getStringBounds(text, MEASURE).getWidth();
    }

    static Color colour(int trace) {
        return COLOURS.get(trace % COLOURS.size());
    }

    static Stroke line(int trace) {
        return switch (trace % 4) {
            case 0 -> solid();
            case 1 -> dashed(8, 4);
            case 2 -> dashed(2, 3);
            default -> dashed(9, 3, 2, 3);
        };
    }

    /** A shape of its own for each, so that colours are not needed to tell them apart. */
    static Shape mark(int trace) {
        return switch (trace % 5) {
            case 0 -> new Ellipse2D.Double(-4, -4, 8, 8);
            case 1 -> new Rectangle2D.Double(-3.5, -3.5, 7, 7);
            case 2 -> polygon(0, -5, 4.5f, 3.5f, -4.5f, 3.5f);
            case 3 -> polygon(0, -5, 5, 0, 0, 5, -5, 0);
            default -> polygon(0, 5, 4.5f, -3.5f, -4.5f, -3.5f);
        };
    }

    private static Shape polygon(float... xy) {
        Path2D path = new Path2D.Float();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        path.closePath();
        return path;
    }

    private static Stroke solid() {
        return new BasicStroke(1.8f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    private static Stroke dashed(float... pattern) {
        return new BasicStroke(1.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, pattern, 0);
    }

    /** Labels in quiet letters; no line, no ticks: the grid is enough. */
    static void applyTo(ValueAxis axis) {
        axis.setLabelFont(AXIS);
        axis.setLabelPaint(INK);
        axis.setTickLabelFont(AXIS);
        axis.setTickLabelPaint(INK);
        axis.setAxisLineVisible(false);
        axis.setTickMarksVisible(false);
    }
}
