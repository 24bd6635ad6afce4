package io.github.tapwright.chart;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** Draws response curves: level over frequency, the 95 % band as a translucent area, resonances named. */
final class ResponseChart implements Drawing {

    /** Deeper valleys than this say more about the room's noise than about the body. */
    private static final double DEEPEST_DB = -60;

    private static final double PIXELS_PER_DB = 6;

    /** A narrow picture of the full height would stand upright like a tower. */
    private static final double PIXELS_PER_DB_ON_A_PAGE = 3.4;

    private static final int AROUND_THE_PLOT = 190;
    private static final int AXIS_AND_MARGINS = 84;
    private static final int BESIDE_THE_PLOT = 100;

    private final ResponsePicture picture;
    private final int width;
    private final double pixelsPerDb;
    private final List<MarkedPeak> peaks;
    private final double lowestDb;
    private final double headroomDb;

    ResponseChart(ResponsePicture picture, int width) {
        this.picture = picture;
        this.width = width;
        this.pixelsPerDb = width < SCREEN_WIDTH ? PIXELS_PER_DB_ON_A_PAGE : PIXELS_PER_DB;
        this.peaks = MarkedPeak.of(picture.traces());
        this.lowestDb = Math.max(DEEPEST_DB, Math.floor(picture.lowestLevelDb() / 10) * 10);
        this.headroomDb = topOfFiguresDb() + namesHeight() / pixelsPerDb;
    }

    /** More where more rows of names are needed. */
    @Override
    public int height() {
        return (int) Math.round((headroomDb - lowestDb) * pixelsPerDb) + aroundThePlot();
    }

    private int aroundThePlot() {
        return picture.title().isEmpty() ? AXIS_AND_MARGINS : AROUND_THE_PLOT;
    }

    @Override
    public JFreeChart chart() {
        FrequencyAxis domain = new FrequencyAxis(picture.lowHz(), picture.highHz());
        XYPlot plot = new XYPlot(
                dataset(), domain, new LevelAxis("Level (dB re highest point)", lowestDb, headroomDb, 0), renderer());
        Dress.plot(plot);
        plot.addAnnotation(new PeakLabels(peaks, figuresOnPeaks()));
        List<String> subtitles = new ArrayList<>(picture.subtitles());
        if (!picture.title().isEmpty()) {
            subtitles.add("shaded: 95 % interval of the mean"
                    + (hasUncertainFigures() ? "; figures: ± one standard uncertainty" : ""));
        }
        return Dress.chart(plot, picture.title(), subtitles, picture.traces().size() > 1);
    }

    /** Where the upright figures end and the names begin. */
    private double topOfFiguresDb() {
        return peaks.stream()
                .filter(p -> figuresOnPeaks() && !p.named())
                .mapToDouble(p -> p.levelDb() + (p.figureWidth() + 20) / pixelsPerDb)
                .reduce(4, Math::max);
    }

    private boolean hasUncertainFigures() {
        return peaks.stream().anyMatch(p -> p.mark().figure().contains("±"));
    }

    /** With several curves, figures on every peak would hide them; the tables hold them. */
    private boolean figuresOnPeaks() {
        return picture.traces().size() == 1;
    }

    private double namesHeight() {
        List<NameBlock> blocks = NameBlock.of(peaks);
        double pixels = width - BESIDE_THE_PLOT;
        double span = Math.log(picture.highHz() / picture.lowHz());
        List<Labels.Extent> extents = blocks.stream()
                .map(b -> Labels.Extent.within(
                        pixels * Math.log(b.anchor().mark().frequencyHz() / picture.lowHz()) / span, b.width(), pixels))
                .toList();
        int rows = Labels.rows(extents).stream().mapToInt(r -> r + 1).max().orElse(0);
        return rows * blocks.stream().mapToInt(NameBlock::height).max().orElse(0);
    }

    private YIntervalSeriesCollection dataset() {
        YIntervalSeriesCollection dataset = new YIntervalSeriesCollection();
        for (Trace trace : picture.traces()) {
            YIntervalSeries series = new YIntervalSeries(dataset.getSeriesCount() + " " + trace.label());
            trace.curve().points().forEach(p -> series.add(p.frequencyHz(), p.levelDb(), p.lowerDb(), p.upperDb()));
            dataset.addSeries(series);
        }
        return dataset;
    }

    private DeviationRenderer renderer() {
        DeviationRenderer renderer = new DeviationRenderer(true, false);
        renderer.setAlpha(0.18f);
        renderer.setLegendLine(new Line2D.Double(-20, 0, 20, 0));
        renderer.setLegendItemLabelGenerator(
                (dataset, series) -> picture.traces().get(series).label());
        for (int i = 0; i < picture.traces().size(); i++) {
            renderer.setSeriesPaint(i, Look.colour(i));
            renderer.setSeriesFillPaint(i, Look.colour(i));
            renderer.setSeriesStroke(i, Look.line(i));
        }
        return renderer;
    }
}
