package io.github.tapwright.chart;

import io.github.tapwright.chart.PointsPicture.Cluster;
import io.github.tapwright.chart.PointsPicture.Mean;
import io.github.tapwright.chart.PointsPicture.Panel;
import io.github.tapwright.chart.PointsPicture.Point;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** Draws one point an instrument in panels below each other, the mean of each group as a line over its interval. */
final class PointsChart implements Drawing {

    private static final int PANEL = 130;
    private static final int AROUND_THE_PLOTS = 160;
    private static final double BESIDE_THE_OUTERMOST = 0.45;
    private static final double GAP = 10;
    /** So that the outermost marks are whole. */
    private static final double MARGIN = 0.2;

    private final PointsPicture picture;
    /** Column of each group's first member. */
    private final List<Integer> starts = new ArrayList<>();

    private final int columns;

    PointsChart(PointsPicture picture) {
        this.picture = picture;
        int next = 0;
        for (PointsPicture.Group group : picture.groups()) {
            starts.add(next);
            next += group.members().size() + 1;
        }
        columns = next - 1;
    }

    @Override
    public int height() {
        return PANEL * picture.panels().size() + AROUND_THE_PLOTS;
    }

    @Override
    public JFreeChart chart() {
        List<String> names = new ArrayList<>();
        for (PointsPicture.Group group : picture.groups()) {
            if (!names.isEmpty()) {
                names.add("");
            }
            names.addAll(group.members());
        }
        CombinedDomainXYPlot all = new CombinedDomainXYPlot(new NameAxis("Instrument", names, columns));
        all.setGap(GAP);
        for (Panel panel : picture.panels()) {
            all.add(plot(panel, panel.equals(picture.panels().get(0))));
        }
        Dress.plot(all);
        return Dress.chart(all, picture.title(), picture.subtitles(), true);
    }

    private XYPlot plot(Panel panel, boolean named) {
        NumberAxis axis = new NumberAxis(panel.axis());
        axis.setAutoRangeIncludesZero(false);
        axis.setNumberFormatOverride(Dress.figures());
        // Upright it would be longer than a panel is high.
        axis.setLabelAngle(Math.PI / 2);
        axis.setLowerMargin(MARGIN);
        axis.setUpperMargin(MARGIN);
        Look.applyTo(axis);
        XYPlot plot = new XYPlot(means(panel), null, axis, meanRenderer());
        plot.setDataset(1, points(panel));
        plot.setRenderer(1, pointRenderer(named));
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        Dress.plot(plot);
        return plot;
    }

    private XYSeriesCollection points(Panel panel) {
        XYSeriesCollection points = new XYSeriesCollection();
        for (int i = 0; i < panel.clusters().size(); i++) {
            XYSeries series = new XYSeries(i);
            for (Point point : panel.clusters().get(i).points()) {
                series.add(starts.get(i) + point.member(), point.value());
            }
            points.addSeries(series);
        }
        return points;
    }

    private YIntervalSeriesCollection means(Panel panel) {
        YIntervalSeriesCollection means = new YIntervalSeriesCollection();
        for (int i = 0; i < panel.clusters().size(); i++) {
            YIntervalSeries series = new YIntervalSeries(i);
            Cluster cluster = panel.clusters().get(i);
            double left = starts.get(i) - BESIDE_THE_OUTERMOST;
            double right = starts.get(i) + picture.groups().get(i).members().size() - 1 + BESIDE_THE_OUTERMOST;
            cluster.mean().ifPresent(m -> {
                add(series, left, m);
                add(series, right, m);
            });
            means.addSeries(series);
        }
        return means;
    }

    private static void add(YIntervalSeries series, double column, Mean mean) {
        series.add(
                column,
                mean.value(),
                mean.lower().orElse(mean.value()),
                mean.upper().orElse(mean.value()));
    }

    private DeviationRenderer meanRenderer() {
        DeviationRenderer renderer = new DeviationRenderer(true, false);
        renderer.setAlpha(0.15f);
        for (int i = 0; i < picture.groups().size(); i++) {
            renderer.setSeriesPaint(i, Look.colour(i));
            renderer.setSeriesFillPaint(i, Look.colour(i));
            renderer.setSeriesStroke(i, Look.FINE);
            renderer.setSeriesVisibleInLegend(i, false);
        }
        return renderer;
    }

    private XYLineAndShapeRenderer pointRenderer(boolean named) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setLegendItemLabelGenerator(
                (dataset, series) -> picture.groups().get(series).label());
        for (int i = 0; i < picture.groups().size(); i++) {
            renderer.setSeriesPaint(i, Look.colour(i));
            renderer.setSeriesShape(i, Look.mark(i));
            renderer.setSeriesVisibleInLegend(i, named);
        }
        return renderer;
    }
}
