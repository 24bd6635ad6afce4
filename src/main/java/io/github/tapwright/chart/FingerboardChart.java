package io.github.tapwright.chart;

import io.github.tapwright.chart.FingerboardPicture.Cell;
import io.github.tapwright.chart.FingerboardPicture.FretMap;
import io.github.tapwright.statistics.Figures;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.DoubleSummaryStatistics;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYBoxAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.LookupPaintScale;
import org.jfree.chart.renderer.xy.XYBlockRenderer;
import org.jfree.data.xy.DefaultXYZDataset;

/** Draws maps of the fingerboard: a darker cell is a larger value, the figure stands in it, what stands out is framed. */
final class FingerboardChart implements Drawing {

    private static final int MAP_HEIGHT = 230;
    private static final int MAP_HEIGHT_ON_A_PAGE = 165;
    private static final int AROUND = 150;
    private static final int AROUND_ON_A_PAGE = 70;
    private static final int STEPS = 64;
    private static final double HALF = 0.5;
    private static final double DARK = 0.55;
    private static final double LEAST_SHARE = 0.08;
    private static final BasicStroke FRAME = new BasicStroke(3f);

    private final FingerboardPicture picture;
    private final boolean onPage;

    FingerboardChart(FingerboardPicture picture, int width) {
        this.picture = picture;
        this.onPage = width < SCREEN_WIDTH;
    }

    @Override
    public int height() {
        return (onPage ? AROUND_ON_A_PAGE : AROUND)
                + (onPage ? MAP_HEIGHT_ON_A_PAGE : MAP_HEIGHT) * picture.maps().size();
    }

    @Override
    public JFreeChart chart() {
        NumberAxis frets = whole("Fret across, string down");
        frets.setRange(-HALF, picture.highestFret() + HALF);
        CombinedDomainXYPlot all = new CombinedDomainXYPlot(frets);
        all.setGap(18);
        picture.maps().forEach(map -> all.add(plot(map)));
        Dress.plot(all);
        return Dress.chart(all, picture.title(), picture.subtitles(), false);
    }

    private XYPlot plot(FretMap map) {
        Shades shades = Shades.of(map);
        NumberAxis strings = whole(map.title());
        strings.setRange(HALF, picture.stringCount() + HALF);
        strings.setInverted(true);
        XYBlockRenderer renderer = new XYBlockRenderer();
        renderer.setPaintScale(scale(shades));
        XYPlot plot = new XYPlot(dataset(map), null, strings, renderer);
        Dress.plot(plot);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        map.cells().forEach(cell -> label(plot, map, cell, shades.share(cell.value())));
        return plot;
    }

    private static NumberAxis whole(String label) {
        NumberAxis axis = new NumberAxis(label);
        axis.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
        axis.setAutoRangeIncludesZero(false);
        Look.applyTo(axis);
        return axis;
    }

    private static DefaultXYZDataset dataset(FretMap map) {
        double[][] data = new double[3][map.cells().size()];
        for (int i = 0; i < map.cells().size(); i++) {
            Cell cell = map.cells().get(i);
            data[0][i] = cell.fret();
            data[1][i] = cell.string();
            data[2][i] = cell.value();
        }
        DefaultXYZDataset dataset = new DefaultXYZDataset();
        dataset.addSeries(map.title(), data);
        return dataset;
    }

    private static void label(XYPlot plot, FretMap map, Cell cell, double share) {
        String figure = Figures.text(cell.value(), map.places());
        XYTextAnnotation text = new XYTextAnnotation(figure, cell.fret(), cell.string());
        text.setFont(Look.FIGURE);
        text.setPaint(share > DARK ? Look.PAPER : Look.INK);
        plot.addAnnotation(text);
        if (cell.marked()) {
            // The axis points down, so the lower edge comes first.
            plot.addAnnotation(new XYBoxAnnotation(
                    cell.fret() - HALF,
                    cell.string() + HALF,
                    cell.fret() + HALF,
                    cell.string() - HALF,
                    FRAME,
                    Look.colour(1)));
        }
    }

    /** Which value is palest, and how much more is darkest. */
    private record Shades(double low, double range) {

        static Shades of(FretMap map) {
            DoubleSummaryStatistics values =
                    map.cells().stream().mapToDouble(Cell::value).summaryStatistics();
            double own = values.getMax() - values.getMin();
            double range = Math.max(own, map.leastRange());
            return new Shades(values.getMin() - (range - own) / 2, range);
        }

        double share(double value) {
            return (value - low) / range;
        }
    }

    /** From paper to the first colour, so that a greyscale print keeps the order. */
    private static LookupPaintScale scale(Shades shades) {
        double low = shades.low;
        double range = shades.range;
        // The highest value must not fall outside by a rounding error, or the darkest cell is drawn pale.
        LookupPaintScale scale = new LookupPaintScale(low - range, low + 2 * range, mixed(LEAST_SHARE));
        for (int i = 0; i < STEPS; i++) {
            double share = (double) i / (STEPS - 1);
            scale.add(low + range * i / STEPS, mixed(LEAST_SHARE + (1 - LEAST_SHARE) * share));
        }
        return scale;
    }

    private static Color mixed(double share) {
        Color from = Look.PAPER;
        Color to = Look.colour(0);
        return new Color(
                (int) Math.round(from.getRed() + share * (to.getRed() - from.getRed())),
                (int) Math.round(from.getGreen() + share * (to.getGreen() - from.getGreen())),
                (int) Math.round(from.getBlue() + share * (to.getBlue() - from.getBlue())));
    }
}
