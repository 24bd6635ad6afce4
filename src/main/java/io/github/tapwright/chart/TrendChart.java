package io.github.tapwright.chart;

import io.github.tapwright.chart.TrendPicture.Dot;
import io.github.tapwright.chart.TrendPicture.Happening;
import io.github.tapwright.chart.TrendPicture.Line;
import io.github.tapwright.chart.TrendPicture.Panel;
import java.awt.geom.Line2D;
import java.text.SimpleDateFormat;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.axis.DateTickUnit;
import org.jfree.chart.axis.DateTickUnitType;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.TickUnits;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** Draws an instrument's history: lines in the common air with bars, hollow marks as measured, humidity below, events upright. */
final class TrendChart implements Drawing {

    private static final int PANEL = 250;
    private static final int PANEL_ON_A_PAGE = 165;
    private static final int STRIP = 110;
    private static final int STRIP_ON_A_PAGE = 80;
    private static final int AROUND_THE_PLOTS = 210;
    private static final int AROUND_ON_A_PAGE = 90;
    private static final int PANEL_WEIGHT = 5;
    private static final int STRIP_WEIGHT = 2;
    private static final double MARGIN = 0.04;
    /** So that figures that hardly move look so. */
    private static final double LEAST_RANGE = 1;

    /** So much of the range stays free above and below, that marks are whole even in the low strip. */
    private static final double MARK_MARGIN = 0.2;

    /** Pixels. */
    private static final double MOST_BESIDE = 7;

    private static final double PART_OF_A_GAP = 0.7;

    private static final Duration LEAST_MARGIN = Duration.ofDays(2);
    private static final List<Integer> DAYS = List.of(1, 2, 7, 14);
    private static final List<Integer> MONTHS = List.of(1, 2, 3, 6);
    private static final List<Integer> YEARS = List.of(1, 2, 5, 10);

    private final TrendPicture picture;
    private final int width;
    private final boolean onPage;

    TrendChart(TrendPicture picture, int width) {
        this.picture = picture;
        this.width = width;
        this.onPage = width < SCREEN_WIDTH;
    }

    @Override
    public int height() {
        int panels = picture.panels().size();
        return onPage
                ? PANEL_ON_A_PAGE * panels + STRIP_ON_A_PAGE + AROUND_ON_A_PAGE
                : PANEL * panels + STRIP + AROUND_THE_PLOTS;
    }

    @Override
    public JFreeChart chart() {
        CombinedDomainXYPlot all = new CombinedDomainXYPlot(time());
        all.setGap(18);
        for (Panel panel : picture.panels()) {
            all.add(panel(panel, panel.equals(picture.panels().get(0))), PANEL_WEIGHT);
        }
        all.add(humidity(), STRIP_WEIGHT);
        Dress.plot(all);
        return Dress.chart(all, picture.title(), picture.subtitles(), true);
    }

    private DateAxis time() {
        DateAxis axis = new DateAxis(null, TimeZone.getTimeZone(picture.zone()), Locale.ROOT);
        List<Instant> times = Stream.concat(
                        Stream.concat(
                                picture.panels().stream()
                                        .flatMap(p -> p.lines().stream())
                                        .flatMap(l -> l.corrected().stream())
                                        .map(Dot::at),
                                picture.humidity().stream().map(Dot::at)),
                        picture.events().stream().map(Happening::at))
                .sorted()
                .toList();
        Instant first = times.get(0);
        Instant last = times.get(times.size() - 1);
        double margin = Math.max(millis(LEAST_MARGIN), MARGIN * millis(Duration.between(first, last)));
        axis.setStandardTickUnits(wholeDays(days()));
        double beside = stepPixels() * Math.max(0, labels().size() - 1) / width;
        axis.setRange(millis(first) - margin, millis(last) + margin + beside * millis(Duration.between(first, last)));
        Look.applyTo(axis);
        return axis;
    }

    /** A day is the shortest step, because labels tell days: a shorter one would say the same day twice. */
    private static TickUnits wholeDays(SimpleDateFormat format) {
        TickUnits units = new TickUnits();
        DAYS.forEach(n -> units.add(new DateTickUnit(DateTickUnitType.DAY, n, format)));
        MONTHS.forEach(n -> units.add(new DateTickUnit(DateTickUnitType.MONTH, n, format)));
        YEARS.forEach(n -> units.add(new DateTickUnit(DateTickUnitType.YEAR, n, format)));
        return units;
    }

    private SimpleDateFormat days() {
        SimpleDateFormat days = new SimpleDateFormat("yyyy-MM-dd", Locale.ROOT);
        days.setTimeZone(TimeZone.getTimeZone(picture.zone()));
        return days;
    }

    private XYPlot panel(Panel panel, boolean first) {
        YIntervalSeriesCollection data = new YIntervalSeriesCollection();
        SideBySideRenderer renderer = new SideBySideRenderer(stepPixels());
        renderer.setDrawXError(false);
        renderer.setCapLength(5);
        renderer.setErrorStroke(Look.FINE);
        renderer.setLegendLine(new Line2D.Double(-20, 0, 20, 0));
        renderer.setUseOutlinePaint(false);
        renderer.setDrawSeriesLineAsPath(true);
        for (Line line : panel.lines()) {
            dress(renderer, data.getSeriesCount(), line.style(), true, first);
            renderer.place(place(panel, line));
            data.addSeries(series(line.label(), line.corrected()));
            if (!line.measured().isEmpty()) {
                dress(renderer, data.getSeriesCount(), line.style(), false, false);
                renderer.place(place(panel, line));
                data.addSeries(series(line.label() + ", as measured", line.measured()));
            }
        }
        return plot(panel.axis(), data, renderer, first);
    }

    /** The same in every panel that has several lines; a line by itself stands at its time. */
    private int place(Panel panel, Line line) {
        return panel.lines().size() == 1 ? 0 : labels().indexOf(line.label());
    }

    /** So much as a bar with its caps takes; less where sittings are many, so that those of one stay together. */
    private double stepPixels() {
        long sittings = picture.panels().stream()
                .flatMap(p -> p.lines().stream())
                .flatMap(l -> l.corrected().stream())
                .map(Dot::at)
                .distinct()
                .count();
        return Math.min(MOST_BESIDE, PART_OF_A_GAP * width / sittings / labels().size());
    }

    private List<String> labels() {
        return picture.panels().stream()
                .filter(p -> p.lines().size() > 1)
                .flatMap(p -> p.lines().stream())
                .map(Line::label)
                .distinct()
                .toList();
    }

    private static void dress(
            XYLineAndShapeRenderer renderer, int series, int style, boolean corrected, boolean inLegend) {
        renderer.setSeriesPaint(series, Look.colour(style));
        renderer.setSeriesStroke(series, Look.line(style));
        renderer.setSeriesShape(series, Look.mark(style));
        renderer.setSeriesLinesVisible(series, corrected);
        renderer.setSeriesShapesFilled(series, corrected);
        renderer.setSeriesVisibleInLegend(series, inLegend);
    }

    private XYPlot humidity() {
        YIntervalSeriesCollection data = new YIntervalSeriesCollection();
        data.addSeries(series("relative humidity", picture.humidity()));
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer();
        renderer.setSeriesPaint(0, Look.QUIET_INK);
        renderer.setSeriesStroke(0, Look.FINE);
        renderer.setSeriesShape(0, Look.mark(0));
        renderer.setSeriesVisibleInLegend(0, false);
        return plot("Humidity (%)", data, renderer, false);
    }

    private XYPlot plot(String label, YIntervalSeriesCollection data, XYLineAndShapeRenderer renderer, boolean named) {
        NumberAxis axis = new NumberAxis(label);
        axis.setAutoRangeIncludesZero(false);
        axis.setAutoRangeMinimumSize(LEAST_RANGE);
        axis.setLowerMargin(MARK_MARGIN);
        axis.setUpperMargin(MARK_MARGIN);
        axis.setNumberFormatOverride(Dress.figures());
        Look.applyTo(axis);
        XYPlot plot = new XYPlot(data, null, axis, renderer);
        Dress.plot(plot);
        picture.events().forEach(e -> plot.addDomainMarker(marker(e, named)));
        return plot;
    }

    private static ValueMarker marker(Happening event, boolean named) {
        ValueMarker marker = new ValueMarker(millis(event.at()), Look.INK, Look.FINE);
        if (named) {
            marker.setLabel(event.label());
            marker.setLabelFont(Look.FIGURE);
            marker.setLabelPaint(Look.INK);
            marker.setLabelAnchor(RectangleAnchor.TOP_LEFT);
            marker.setLabelTextAnchor(TextAnchor.TOP_RIGHT);
            marker.setLabelBackgroundColor(Look.VEIL);
        }
        return marker;
    }

    private static double millis(Instant at) {
        return (double) at.toEpochMilli();
    }

    private static double millis(Duration span) {
        return (double) span.toMillis();
    }

    private static YIntervalSeries series(String name, List<Dot> dots) {
        YIntervalSeries series = new YIntervalSeries(name);
        dots.forEach(d -> series.add(millis(d.at()), d.value(), d.value() - d.halfWidth(), d.value() + d.halfWidth()));
        return series;
    }
}
