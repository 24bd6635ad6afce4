package io.github.tapwright.chart;

import io.github.tapwright.level.loudness.EqualLoudness;
import java.awt.Color;
import java.awt.Stroke;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Contours of equal loudness laid over a spectrum, so that a reader sees where the ear is dull. Source: [ISO226]. */
final class LoudnessContours {

    private static final List<Integer> PHON = List.of(20, 40, 60, 80);

    private LoudnessContours() {}

    /** Draws the contours over what a plot shows, each with its name where it leaves the picture on the right. */
    static void addTo(XYPlot plot) {
        XYSeriesCollection contours = new XYSeriesCollection();
        PHON.forEach(phon -> contours.addSeries(contour(phon)));
        addLayer(plot, contours, Look.VEIL, Look.HALO);
        addLayer(plot, contours, Look.INK, Look.FINE);
        for (int i = 0; i < PHON.size(); i++) {
            name(plot, PHON.get(i), contours.getSeries(i));
        }
    }

    private static void addLayer(XYPlot plot, XYSeriesCollection contours, Color colour, Stroke stroke) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDefaultSeriesVisibleInLegend(false);
        for (int i = 0; i < contours.getSeriesCount(); i++) {
            renderer.setSeriesPaint(i, colour);
            renderer.setSeriesStroke(i, stroke);
        }
        int layer = plot.getDatasetCount();
        plot.setDataset(layer, contours);
        plot.setRenderer(layer, renderer);
    }

    private static XYSeries contour(int phon) {
        XYSeries series = new XYSeries(phon + " phon");
        for (double hertz : EqualLoudness.frequenciesHz()) {
            EqualLoudness.levelDb(hertz, phon).ifPresent(db -> series.add(hertz, db));
        }
        return series;
    }

    private static void name(XYPlot plot, int phon, XYSeries contour) {
        List<XYTextAnnotation> names = new ArrayList<>();
        for (int i = contour.getItemCount() - 1; i >= 0 && names.isEmpty(); i--) {
            double hertz = contour.getX(i).doubleValue();
            double db = contour.getY(i).doubleValue();
            if (plot.getDomainAxis().getRange().contains(hertz)
                    && plot.getRangeAxis().getRange().contains(db)) {
                names.add(new XYTextAnnotation(phon + " phon", hertz * 1.03, db));
            }
        }
        names.forEach(n -> {
            n.setFont(Look.FIGURE);
            n.setPaint(Look.INK);
            n.setBackgroundPaint(Look.VEIL);
            n.setTextAnchor(TextAnchor.CENTER_LEFT);
            plot.addAnnotation(n);
        });
    }
}
