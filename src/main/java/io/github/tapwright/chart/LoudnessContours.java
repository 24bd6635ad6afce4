package io.github.tapwright.chart;

import io.github.tapwright.level.loudness.EqualLoudness;
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
    static void addTo(XYPlot plot, int dataset) {
        XYSeriesCollection contours = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDefaultSeriesVisibleInLegend(false);
        for (int phon : PHON) {
            XYSeries contour = contour(phon);
            renderer.setSeriesPaint(contours.getSeriesCount(), Look.QUIET_INK);
            renderer.setSeriesStroke(contours.getSeriesCount(), Look.FINE);
            contours.addSeries(contour);
            name(plot, phon, contour);
        }
        plot.setDataset(dataset, contours);
        plot.setRenderer(dataset, renderer);
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
            n.setPaint(Look.QUIET_INK);
            n.setBackgroundPaint(Look.VEIL);
            n.setTextAnchor(TextAnchor.CENTER_LEFT);
            plot.addAnnotation(n);
        });
    }
}
