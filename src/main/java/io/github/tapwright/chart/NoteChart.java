package io.github.tapwright.chart;

import io.github.tapwright.chart.NotePicture.Stem;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.function.Function;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Draws a note's partials: their levels as stems, their decay times as dots, the slow stage as squares. */
final class NoteChart implements Drawing {

    private static final int HEIGHT = 720;
    private static final double STEM_SHARE = 0.004;

    private final NotePicture picture;

    NoteChart(NotePicture picture) {
        this.picture = picture;
    }

    @Override
    public int height() {
        return HEIGHT;
    }

    @Override
    public JFreeChart chart() {
        NumberAxis frequency = axis("Frequency (Hz)");
        frequency.setRange(0, 1.05 * highestHz());
        CombinedDomainXYPlot all = new CombinedDomainXYPlot(frequency);
        all.setGap(18);
        all.add(levels());
        all.add(decays());
        Dress.plot(all);
        return Dress.chart(all, picture.title(), picture.subtitles(), true);
    }

    private double highestHz() {
        return picture.partials().stream().mapToDouble(Stem::frequencyHz).max().orElse(1);
    }

    private static NumberAxis axis(String label) {
        NumberAxis axis = new NumberAxis(label);
        axis.setNumberFormatOverride(Dress.figures());
        Look.applyTo(axis);
        return axis;
    }

    private XYPlot levels() {
        double lowest =
                picture.partials().stream().mapToDouble(Stem::levelDb).min().orElse(0);
        double foot = Math.floor((lowest - 5) / 10) * 10;
        double widest =
                picture.partials().stream().mapToDouble(Stem::frequencyHz).max().orElse(1) * STEM_SHARE;
        XYIntervalSeries series = new XYIntervalSeries("level just after the pluck");
        for (Stem s : picture.partials()) {
            series.add(
                    s.frequencyHz(),
                    s.frequencyHz() - widest,
                    s.frequencyHz() + widest,
                    s.levelDb(),
                    foot,
                    s.levelDb());
        }
        XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
        data.addSeries(series);
        XYBarRenderer renderer = new XYBarRenderer();
        renderer.setBarPainter(new StandardXYBarPainter());
        renderer.setShadowVisible(false);
        renderer.setBase(foot);
        renderer.setSeriesPaint(0, Look.colour(0));
        NumberAxis level = axis("Level (dB re full scale)");
        level.setAutoRangeIncludesZero(false);
        XYPlot plot = new XYPlot(data, null, level, renderer);
        Dress.plot(plot);
        return plot;
    }

    private XYPlot decays() {
        XYSeriesCollection data = new XYSeriesCollection();
        data.addSeries(series("decay time, early stage", Stem::earlySeconds));
        if (picture.partials().stream().anyMatch(s -> s.lateSeconds().isPresent())) {
            data.addSeries(series("late stage", Stem::lateSeconds));
        }
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setSeriesPaint(0, Look.colour(0));
        renderer.setSeriesShape(0, new Ellipse2D.Double(-4, -4, 8, 8));
        renderer.setSeriesPaint(1, Look.colour(1));
        renderer.setSeriesShape(1, new Rectangle2D.Double(-3.5, -3.5, 7, 7));
        NumberAxis seconds = axis("Decay time for 60 dB (s)");
        XYPlot plot = new XYPlot(data, null, seconds, renderer);
        Dress.plot(plot);
        return plot;
    }

    private XYSeries series(String name, Function<Stem, Optional<Double>> of) {
        XYSeries series = new XYSeries(name);
        picture.partials().forEach(s -> of.apply(s).ifPresent(t -> series.add(s.frequencyHz(), t.doubleValue())));
        return series;
    }
}
