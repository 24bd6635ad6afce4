package io.github.tapwright.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/** A picture laid out for a page, narrower than on a screen, so that its letters stay readable at the width of A4. */
public final class PagePicture {

    /** Over 174 mm of paper a letter of 11 pixels is 2.8 mm high, as in a printed text of 8 points. */
    private static final int WIDTH = 680;

    private final Drawing drawing;

    private PagePicture(Drawing drawing) {
        this.drawing = drawing;
    }

    /**
     * Lays a picture out for a page.
     *
     * @param picture what to show; without a title, because the page says what it is
     * @return the same picture for the same input
     */
    public static PagePicture of(Picture picture) {
        return new PagePicture(Drawing.of(picture, WIDTH));
    }

    /**
     * Its width.
     *
     * @return pixels
     */
    public int width() {
        return WIDTH;
    }

    /**
     * Its height.
     *
     * @return pixels
     */
    public int height() {
        return drawing.height();
    }

    /**
     * The picture as SVG.
     *
     * @param prefix begins every identifier in it; no two pictures of a document may share one
     * @return the text of an svg element, every text in it escaped
     */
    public String svg(String prefix) {
        return SvgPicture.of(drawing, WIDTH, prefix);
    }

    /**
     * Draws the picture over its own width and height.
     *
     * @param g2 where to
     */
    public void draw(Graphics2D g2) {
        drawing.chart().draw(g2, new Rectangle2D.Double(0, 0, width(), height()));
    }
}
