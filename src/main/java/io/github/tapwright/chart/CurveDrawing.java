package io.github.tapwright.chart;

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;

/**
 * Response curves a reader moves about in: the same lines, bands and names as {@link ResponsePicture} on paper, but for
 * any window and any size, and quick enough to follow the hand.
 */
public final class CurveDrawing {

    private static final double DEEPEST_DB = -60;

    /** More bands than these cover each other up; the tables still hold every uncertainty. */
    private static final int MOST_BANDS = 3;

    private final List<Trace> traces;
    private final List<MarkedPeak> peaks;
    private final double a4Hz;

    /**
     * A drawing.
     *
     * @param traces the curves; with none, axes alone are drawn
     * @param a4Hz tuning note of the note names on the upper axis
     */
    public CurveDrawing(List<Trace> traces, double a4Hz) {
        this.traces = List.copyOf(traces);
        this.peaks = MarkedPeak.of(this.traces);
        this.a4Hz = a4Hz;
    }

    /**
     * Whether the 95 % bands are drawn.
     *
     * @return false where there are so many curves that they would cover each other up
     */
    public boolean showsBands() {
        return traces.size() <= MOST_BANDS;
    }

    /**
     * The window that shows everything, with room for the names above.
     *
     * @return 50 to 1000 Hz where there is no curve
     */
    public CurveWindow everything() {
        if (traces.isEmpty()) {
            return new CurveWindow(50, 1000, DEEPEST_DB, 20);
        }
        ResponsePicture all = new ResponsePicture("", List.of(), traces);
        double lowest = Math.max(DEEPEST_DB, Math.floor(all.lowestLevelDb() / 10) * 10);
        return new CurveWindow(all.lowHz(), all.highHz(), lowest, traces.size() == 1 ? 26 : 30);
    }

    /**
     * Draws.
     *
     * @param window what to show
     * @param width in the window's own units
     * @param height likewise
     * @param scale pixels to a unit
     * @param light on light or dark paper
     * @return the pixels, and where the plot lies in them
     */
    public CurveSheet draw(CurveWindow window, double width, double height, double scale, Light light) {
        ChartRenderingInfo info = new ChartRenderingInfo(null);
        Raster raster = Raster.draw(columns(width, scale), columns(height, scale), light, g2 -> {
            g2.scale(scale, scale);
            chart(window, columns(width, scale)).draw(g2, new Rectangle2D.Double(0, 0, width, height), info);
        });
        Rectangle2D area = info.getPlotInfo().getDataArea();
        return new CurveSheet(raster, window, area.getX(), area.getY(), area.getWidth(), area.getHeight());
    }

    private static int columns(double units, double scale) {
        return Math.max(1, (int) Math.round(units * scale));
    }

    private JFreeChart chart(CurveWindow window, int columns) {
        // each for itself, and together a fifth of the time a frame takes
        List<VisibleCurve> curves = traces.parallelStream()
                .map(t -> VisibleCurve.of(t.curve(), window, columns))
                .toList();
        XYPlot plot = new XYPlot(
                new VisibleCurves(curves),
                new FrequencyAxis(window.lowHz(), window.highHz()),
                new LevelAxis("Level (dB re highest point)", window.lowDb(), window.highDb(), topTick(window)),
                new CurveRenderer(showsBands()));
        Dress.plot(plot);
        plot.setDomainAxis(1, new NoteAxis(window.lowHz(), window.highHz(), a4Hz));
        plot.setDomainAxisLocation(1, AxisLocation.TOP_OR_LEFT);
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.REVERSE);
        plot.addAnnotation(new PeakLabels(inside(window), traces.size() == 1));
        JFreeChart chart = new JFreeChart(null, Look.TITLE, plot, false);
        chart.setBackgroundPaint(Look.PAPER);
        chart.setPadding(new RectangleInsets(4, 8, 4, 12));
        return chart;
    }

    private static double topTick(CurveWindow window) {
        return Math.min(0, Math.floor(window.highDb() / 10) * 10);
    }

    private List<MarkedPeak> inside(CurveWindow window) {
        return peaks.stream()
                .filter(p -> p.mark().frequencyHz() >= window.lowHz()
                        && p.mark().frequencyHz() <= window.highHz()
                        && p.levelDb() >= window.lowDb())
                .toList();
    }
}
