package io.github.tapwright.chart;

import java.awt.geom.Rectangle2D;
import org.jfree.svg.SVGGraphics2D;

/** A drawing as the text of an SVG element, the same for the same drawing. */
final class SvgPicture {

    private SvgPicture() {}

    /** Draws; a document that holds several pictures gives each its own prefix, so that their clips keep apart. */
    static String of(Drawing drawing, int width, String prefix) {
        SVGGraphics2D g2 = new SVGGraphics2D(width, drawing.height());
        g2.setDefsKeyPrefix(prefix);
        g2.setFontFunction(family -> Lettering.FAMILIES);
        drawing.chart().draw(g2, new Rectangle2D.Double(0, 0, width, drawing.height()));
        return g2.getSVGElement();
    }
}
