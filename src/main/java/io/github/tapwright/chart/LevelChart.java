package io.github.tapwright.chart;

import io.github.tapwright.level.BandLevel;
import io.github.tapwright.level.band.Band;
import java.util.List;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;

/** Draws band levels as bars as wide as their bands, the spectra side by side within each band. */
final class LevelChart implements Drawing {

    private static final int HEIGHT = 620;

    /** Bands further below the loudest say more about the input than about the sound. */
    private static final double DEEPEST_DB = 80;

    /** Between the highest figure and the lines of text. */
    private static final double ROOM_DB = 2;

    private final LevelPicture picture;
    private final double highestDb;
    private final double lowestDb;

    LevelChart(LevelPicture picture) {
        this.picture = picture;
        this.highestDb = Math.ceil((picture.levelsDb().getMax() + 3) / 10) * 10;
        double lowest = Math.floor((picture.levelsDb().getMin() - 3) / 10) * 10;
        this.lowestDb = Math.max(lowest, highestDb - DEEPEST_DB);
    }

    @Override
    public int height() {
        return HEIGHT;
    }

    @Override
    public JFreeChart chart() {
        LevelAxis range =
                new LevelAxis("Level (" + picture.reference().unit() + ")", lowestDb, highestDb + ROOM_DB, highestDb);
        XYPlot plot = new XYPlot(bars(), new OctaveAxis(picture.lowHz(), picture.highHz()), range, renderer());
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        Dress.plot(plot);
        if (picture.calibrated()) {
            LoudnessContours.addTo(plot);
        }
        return Dress.chart(plot, picture.title(), subtitles(), picture.spectra().size() > 1);
    }

    private List<String> subtitles() {
        String lines = picture.calibrated()
                ? "lines: equally loud pure tones in a free field, ISO 226; for orientation, a band is no pure tone"
                : "relative levels: they compare recordings made with one microphone at one gain";
        return Stream.concat(picture.subtitles().stream(), Stream.of(lines)).toList();
    }

    private XYIntervalSeriesCollection bars() {
        XYIntervalSeriesCollection bars = new XYIntervalSeriesCollection();
        int count = picture.spectra().size();
        for (int i = 0; i < count; i++) {
            XYIntervalSeries series =
                    new XYIntervalSeries(i + " " + picture.spectra().get(i).label());
            for (BandLevel level : picture.spectra().get(i).bands()) {
                addBar(series, level, i, count);
            }
            bars.addSeries(series);
        }
        return bars;
    }

    /** One of {@code count} bars that share the width of a band. */
    private void addBar(XYIntervalSeries series, BandLevel level, int place, int count) {
        Band band = level.band();
        double ratio = band.upperHz() / band.lowerHz();
        double left = band.lowerHz() * Math.pow(ratio, (double) place / count);
        double right = band.lowerHz() * Math.pow(ratio, (place + 1.0) / count);
        double db = level.level().levelDb();
        if (db > lowestDb) {
            series.add(Math.sqrt(left * right), left, right, db, db, db);
        }
    }

    private XYBarRenderer renderer() {
        XYBarRenderer renderer = new XYBarRenderer(0.12);
        renderer.setBarPainter(new StandardXYBarPainter());
        renderer.setShadowVisible(false);
        renderer.setDrawBarOutline(false);
        renderer.setBase(lowestDb);
        renderer.setLegendItemLabelGenerator(
                (dataset, series) -> picture.spectra().get(series).label());
        for (int i = 0; i < picture.spectra().size(); i++) {
            renderer.setSeriesPaint(i, Look.colour(i));
        }
        return renderer;
    }
}
