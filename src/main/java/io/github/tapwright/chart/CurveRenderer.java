package io.github.tapwright.chart;

import java.awt.AlphaComposite;
import java.awt.Composite;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CrosshairState;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.AbstractXYItemRenderer;
import org.jfree.chart.renderer.xy.XYItemRendererState;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.xy.IntervalXYDataset;
import org.jfree.data.xy.XYDataset;

/** Draws each curve, and its band where asked, as one path: far quicker than a line at a time. */
final class CurveRenderer extends AbstractXYItemRenderer {

    private static final long serialVersionUID = 1L;

    private static final float BAND_ALPHA = 0.18f;

    private final boolean bands;

    CurveRenderer(boolean bands) {
        this.bands = bands;
    }

    /** The whole series is drawn with its first item. */
    @Override
    public void drawItem(
            Graphics2D g2,
            XYItemRendererState state,
            Rectangle2D area,
            PlotRenderingInfo info,
            XYPlot plot,
            ValueAxis frequency,
            ValueAxis level,
            XYDataset dataset,
            int series,
            int item,
            CrosshairState crosshair,
            int pass) {
        if (item != state.getFirstItemIndex()) {
            return;
        }
        IntervalXYDataset curves = (IntervalXYDataset) dataset;
        Places places = new Places(curves, series, frequency, level, area);
        g2.setPaint(Look.colour(series));
        if (bands) {
            Composite before = g2.getComposite();
            g2.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, BAND_ALPHA));
            g2.fill(places.band());
            g2.setComposite(before);
        }
        g2.setStroke(Look.line(series));
        g2.draw(places.line());
    }

    /** Where the points of one series are drawn. */
    private record Places(
            IntervalXYDataset curves, int series, ValueAxis frequency, ValueAxis level, Rectangle2D area) {

        Path2D line() {
            ThinPath path = new ThinPath();
            int points = curves.getItemCount(series);
            for (int i = 0; i < points; i++) {
                path.to(x(i), y(curves.getYValue(series, i)));
            }
            return path.path();
        }

        Path2D band() {
            ThinPath path = new ThinPath();
            int points = curves.getItemCount(series);
            for (int i = 0; i < points; i++) {
                path.to(x(i), y(curves.getEndYValue(series, i)));
            }
            for (int i = points - 1; i >= 0; i--) {
                path.to(x(i), y(curves.getStartYValue(series, i)));
            }
            Path2D outline = path.path();
            outline.closePath();
            return outline;
        }

        private double x(int item) {
            return frequency.valueToJava2D(curves.getXValue(series, item), area, RectangleEdge.BOTTOM);
        }

        private double y(double levelDb) {
            return level.valueToJava2D(levelDb, area, RectangleEdge.LEFT);
        }
    }
}
