package io.github.tapwright.chart;

import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Draws groups side by side: each figure a point with its owner's number beside it, the mean of a group as a bar. */
final class PointsChart implements Drawing {

    private static final int HEIGHT = 430;
    private static final double MEAN_REACH = 0.22;
    private static final double LABEL_GAP = 0.03;

    private final PointsPicture picture;

    PointsChart(PointsPicture picture) {
        this.picture = picture;
    }

    @Override
    public int height() {
        return HEIGHT;
    }

    @Override
    public JFreeChart chart() {
        List<PointsPicture.Group> groups = picture.groups();
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        XYPlot plot = new XYPlot(data, groupAxis(), figureAxis(), renderer);
        for (int g = 0; g < groups.size(); g++) {
            addPoints(data, renderer, g);
            label(plot, g);
            addMean(data, renderer, g);
        }
        Dress.plot(plot);
        plot.setDomainGridlinesVisible(false);
        return Dress.chart(plot, picture.title(), picture.subtitles(), false);
    }

    private SymbolAxis groupAxis() {
        SymbolAxis axis = new SymbolAxis(
                null, picture.groups().stream().map(PointsPicture.Group::name).toArray(String[]::new));
        axis.setGridBandsVisible(false);
        axis.setRange(-0.5, picture.groups().size() - 0.5);
        Look.applyTo(axis);
        return axis;
    }

    private NumberAxis figureAxis() {
        NumberAxis axis = new NumberAxis(picture.axis());
        axis.setAutoRangeIncludesZero(false);
        Look.applyTo(axis);
        return axis;
    }

    private void addPoints(XYSeriesCollection data, XYLineAndShapeRenderer renderer, int group) {
        XYSeries points = new XYSeries("points " + group);
        picture.groups().get(group).points().forEach(p -> points.add(group, p.value()));
        int series = data.getSeriesCount();
        data.addSeries(points);
        renderer.setSeriesPaint(series, Look.colour(group));
        renderer.setSeriesShape(series, Look.mark(group));
    }

    private void label(XYPlot plot, int group) {
        for (PointsPicture.Point point : picture.groups().get(group).points()) {
            XYTextAnnotation text = new XYTextAnnotation(point.label(), group + LABEL_GAP, point.value());
            text.setFont(Look.FIGURE);
            text.setPaint(Look.INK);
            text.setTextAnchor(TextAnchor.CENTER_LEFT);
            plot.addAnnotation(text);
        }
    }

    private void addMean(XYSeriesCollection data, XYLineAndShapeRenderer renderer, int group) {
        picture.groups().get(group).points().stream()
                .mapToDouble(PointsPicture.Point::value)
                .average()
                .ifPresent(mean -> {
                    XYSeries bar = new XYSeries("mean " + group);
                    bar.add(group - MEAN_REACH, mean);
                    bar.add(group + MEAN_REACH, mean);
                    int series = data.getSeriesCount();
                    data.addSeries(bar);
                    renderer.setSeriesLinesVisible(series, true);
                    renderer.setSeriesShapesVisible(series, false);
                    renderer.setSeriesPaint(series, Look.QUIET_INK);
                    renderer.setSeriesStroke(series, Look.FINE);
                });
    }
}
