package io.github.tapwright.chart;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CrosshairState;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.renderer.xy.XYItemRendererState;
import org.jfree.data.xy.XYDataset;

/**
 * Draws series of like times beside each other, so that bars do not hide each other: the first at its time, each further one a
 * little to the right. To the right, because what was done to an instrument on the day of a sitting was done before it.
 */
final class SideBySideRenderer extends XYErrorRenderer {

    private static final long serialVersionUID = 1L;

    private final double stepPixels;
    private final transient List<Integer> places = new ArrayList<>();

    /** Takes how far each series stands from the one before it. */
    SideBySideRenderer(double stepPixels) {
        this.stepPixels = stepPixels;
    }

    /** Gives the next series its place, 0 for the one at its time. */
    void place(int place) {
        places.add(place);
    }

    @Override
    public void drawItem(
            Graphics2D g2,
            XYItemRendererState state,
            Rectangle2D dataArea,
            PlotRenderingInfo info,
            XYPlot plot,
            ValueAxis domainAxis,
            ValueAxis rangeAxis,
            XYDataset dataset,
            int series,
            int item,
            CrosshairState crosshair,
            int pass) {
        AffineTransform before = g2.getTransform();
        g2.translate(stepPixels * places.get(series), 0);
        super.drawItem(g2, state, dataArea, info, plot, domainAxis, rangeAxis, dataset, series, item, crosshair, pass);
        g2.setTransform(before);
    }
}
