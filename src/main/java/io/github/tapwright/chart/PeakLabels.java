package io.github.tapwright.chart;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.IntStream;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;

/**
 * Marks the peaks: named ones by name and figures in the room above the curves, with a thin line down to the
 * first of them; any other by its figure alone, standing upright on its peak, or where there are several curves
 * by a dot alone.
 */
final class PeakLabels extends AbstractXYAnnotation {

    private static final long serialVersionUID = 1L;

    private static final double DOT = 3;
    private static final double UPRIGHT_WIDTH = 13;

    private final transient List<MarkedPeak> peaks;
    private final transient List<NameBlock> blocks;
    private final boolean figuresOnPeaks;

    PeakLabels(List<MarkedPeak> peaks, boolean figuresOnPeaks) {
        this.peaks = peaks;
        this.blocks = NameBlock.of(peaks);
        this.figuresOnPeaks = figuresOnPeaks;
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
        drawNames(g2, dataArea, placed);
        if (figuresOnPeaks) {
            drawFigures(g2, placed);
        }
        placed.forEach(p -> drawDot(g2, p));
    }

    private record PlacedPeak(MarkedPeak peak, double x, double y) {}

    private void drawNames(Graphics2D g2, Rectangle2D dataArea, List<PlacedPeak> placed) {
        List<PlacedPeak> anchors =
                blocks.stream().map(b -> placed.get(peaks.indexOf(b.anchor()))).toList();
        List<Labels.Extent> extents = IntStream.range(0, blocks.size())
                .mapToObj(i ->
                        Labels.Extent.within(anchors.get(i).x, blocks.get(i).width(), dataArea.getMaxX()))
                .toList();
        List<Integer> rows = Labels.rows(extents);
        int rowHeight = blocks.stream().mapToInt(NameBlock::height).max().orElse(0);
        for (int i = 0; i < blocks.size(); i++) {
            drawLeader(g2, anchors.get(i), top(dataArea, rows.get(i), rowHeight));
        }
        for (int i = 0; i < blocks.size(); i++) {
            float top = (float) top(dataArea, rows.get(i), rowHeight);
            drawBlock(g2, blocks.get(i), (float) extents.get(i).left() + 4, top);
        }
    }

    private static double top(Rectangle2D dataArea, int row, int rowHeight) {
        return dataArea.getMinY() + 4 + row * rowHeight;
    }

    private static void drawLeader(Graphics2D g2, PlacedPeak anchor, double top) {
        g2.setPaint(Look.QUIET_INK);
        g2.setStroke(Look.HAIRLINE);
        g2.draw(new Line2D.Double(anchor.x, top, anchor.x, anchor.y - DOT));
    }

    /** On a low picture a block may reach down to the curves; the veil behind it keeps its words readable there. */
    private static void drawBlock(Graphics2D g2, NameBlock block, float left, float top) {
        g2.setPaint(Look.VEIL);
        g2.fill(new Rectangle2D.Double(left - 2, top, block.width(), block.height()));
        g2.setPaint(Look.INK);
        g2.setFont(Look.NAME);
        g2.drawString(block.name(), left, top + 11);
        g2.setFont(Look.FIGURE);
        for (int i = 0; i < block.peaks().size(); i++) {
            MarkedPeak peak = block.peaks().get(i);
            g2.setPaint(peak.colour());
            g2.drawString(peak.mark().figure(), left, top + 24 + 13 * i);
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
        g2.fill(new Rectangle2D.Double(-2, -10, placed.peak.figureWidth() + 4, 13));
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
