package io.github.tapwright.chart;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;

/**
 * Marks the peaks: a named one by name and figure in the room above the curves, with a thin line down to its
 * peak; any other by its figure alone, standing upright on its peak.
 */
final class PeakLabels extends AbstractXYAnnotation {

    private static final long serialVersionUID = 1L;

    static final int ROW_HEIGHT = 32;

    private static final double DOT = 3;
    private static final double UPRIGHT_WIDTH = 13;

    private final transient List<MarkedPeak> peaks;

    PeakLabels(List<MarkedPeak> peaks) {
        this.peaks = peaks;
    }

    @Override
    public void draw(
            Graphics2D g2,
            XYPlot plot,
            Rectangle2D dataArea,
            ValueAxis domainAxis,
            ValueAxis rangeAxis,
            int rendererIndex,
            PlotRenderingInfo info) {
        List<PlacedPeak> placed = peaks.stream()
                .map(p -> new PlacedPeak(
                        p,
                        domainAxis.valueToJava2D(p.mark().frequencyHz(), dataArea, RectangleEdge.BOTTOM),
                        rangeAxis.valueToJava2D(p.levelDb(), dataArea, RectangleEdge.LEFT)))
                .toList();
        drawNames(g2, dataArea, placed.stream().filter(p -> p.peak.named()).toList());
        drawFigures(g2, placed);
        placed.forEach(p -> drawDot(g2, p));
    }

    private record PlacedPeak(MarkedPeak peak, double x, double y) {}

    private static void drawNames(Graphics2D g2, Rectangle2D dataArea, List<PlacedPeak> named) {
        List<Labels.Extent> extents = named.stream()
                .map(p -> Labels.Extent.within(p.x, p.peak.width(), dataArea.getMaxX()))
                .toList();
        List<Integer> rows = Labels.rows(extents);
        for (int i = 0; i < named.size(); i++) {
            PlacedPeak placed = named.get(i);
            double top = dataArea.getMinY() + 4 + rows.get(i) * ROW_HEIGHT;
            g2.setPaint(Look.QUIET_INK);
            g2.setStroke(Look.HAIRLINE);
            g2.draw(new Line2D.Double(placed.x, top, placed.x, placed.y - DOT));
            float left = (float) extents.get(i).left() + 4;
            g2.setPaint(placed.peak.colour());
            g2.setFont(Look.NAME);
            g2.drawString(placed.peak.mark().name(), left, (float) top + 11);
            g2.setPaint(Look.INK);
            g2.setFont(Look.FIGURE);
            g2.drawString(placed.peak.mark().figure(), left, (float) top + 24);
        }
    }

    /** Upright figures keep clear of each other and of the lines of the names by moving to the right. */
    private static void drawFigures(Graphics2D g2, List<PlacedPeak> placed) {
        double free = Double.NEGATIVE_INFINITY;
        for (PlacedPeak p : placed) {
            if (p.peak.named()) {
                free = p.x + UPRIGHT_WIDTH / 2;
            } else {
                double x = Math.max(p.x, free);
                drawUpright(g2, p, x);
                free = x + UPRIGHT_WIDTH;
            }
        }
    }

    private static void drawUpright(Graphics2D g2, PlacedPeak placed, double x) {
        AffineTransform before = g2.getTransform();
        g2.translate(x + 4, placed.y - 3 * DOT);
        g2.rotate(-Math.PI / 2);
        g2.setPaint(Look.VEIL);
        g2.fill(new Rectangle2D.Double(-2, -10, placed.peak.width() - 6, 13));
        g2.setPaint(placed.peak.colour());
        g2.setFont(Look.FIGURE);
        g2.drawString(placed.peak.mark().figure(), 0, 0);
        g2.setTransform(before);
    }

    private static void drawDot(Graphics2D g2, PlacedPeak placed) {
        g2.setPaint(placed.peak.colour());
        g2.fill(new Ellipse2D.Double(placed.x - DOT, placed.y - DOT, 2 * DOT, 2 * DOT));
    }
}
