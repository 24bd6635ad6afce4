package io.github.tapwright.chart;

import io.github.tapwright.chart.GroupPicture.Curve;
import io.github.tapwright.chart.GroupPicture.Dot;
import java.awt.geom.Line2D;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** Draws the responses of groups: a line and a dot a band for each, its interval as a translucent area. */
final class GroupChart implements Drawing {

    private static final double STEP_DB = 10;
    private static final double PIXELS_PER_DB = 11;
    private static final int AROUND_THE_PLOT = 190;
    private static final double PIXELS_PER_DB_ON_A_PAGE = 7;
    private static final int AROUND_ON_A_PAGE = 110;
    private static final double SIXTH_OF_AN_OCTAVE = Math.pow(10, 0.05);

    private final GroupPicture picture;
    private final boolean onPage;
    private final double lowestDb;
    private final double highestDb;

    GroupChart(GroupPicture picture, int width) {
        this.picture = picture;
        this.onPage = width < SCREEN_WIDTH;
        lowestDb = Math.floor(of(Dot::lowest).min().orElseThrow() / STEP_DB) * STEP_DB;
        highestDb = Math.ceil(of(Dot::highest).max().orElseThrow() / STEP_DB) * STEP_DB;
    }

    @Override
    public int height() {
        double perDb = onPage ? PIXELS_PER_DB_ON_A_PAGE : PIXELS_PER_DB;
        return (int) Math.round((highestDb - lowestDb + 1) * perDb) + (onPage ? AROUND_ON_A_PAGE : AROUND_THE_PLOT);
    }

    @Override
    public JFreeChart chart() {
        FrequencyAxis frequency = new FrequencyAxis(
                of(Dot::midHz).min().orElseThrow() / SIXTH_OF_AN_OCTAVE,
                of(Dot::midHz).max().orElseThrow() * SIXTH_OF_AN_OCTAVE);
        LevelAxis level = new LevelAxis("Level (dB re mean over bands)", lowestDb - 0.5, highestDb + 0.5, highestDb);
        XYPlot plot = new XYPlot(dataset(), frequency, level, renderer());
        Dress.plot(plot);
        return Dress.chart(plot, picture.title(), picture.subtitles(), true);
    }

    private DoubleStream of(ToDoubleFunction<Dot> figure) {
        return picture.curves().stream().flatMap(c -> c.dots().stream()).mapToDouble(figure);
    }

    private YIntervalSeriesCollection dataset() {
        YIntervalSeriesCollection dataset = new YIntervalSeriesCollection();
        for (Curve curve : picture.curves()) {
            YIntervalSeries series = new YIntervalSeries(dataset.getSeriesCount() + " " + curve.label());
            curve.dots().forEach(d -> series.add(d.midHz(), d.levelDb(), d.lowest(), d.highest()));
            dataset.addSeries(series);
        }
        return dataset;
    }

    private DeviationRenderer renderer() {
        DeviationRenderer renderer = new DeviationRenderer(true, true);
        renderer.setAlpha(0.18f);
        renderer.setLegendLine(new Line2D.Double(-20, 0, 20, 0));
        renderer.setLegendItemLabelGenerator(
                (dataset, series) -> picture.curves().get(series).label());
        for (int i = 0; i < picture.curves().size(); i++) {
            renderer.setSeriesPaint(i, Look.colour(i));
            renderer.setSeriesFillPaint(i, Look.colour(i));
            renderer.setSeriesStroke(i, Look.line(i));
            renderer.setSeriesShape(i, Look.mark(i));
        }
        return renderer;
    }
}
