package io.github.tapwright.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.TickType;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** A logarithmic axis with round numbers of hertz where a reader expects them. */
final class FrequencyAxis extends LogAxis {

    private static final long serialVersionUID = 1L;

    private static final double[] LABELLED = {1, 1.5, 2, 3, 4, 5, 6, 8};
    private static final double[] GRID_ONLY = {1.2, 2.5, 7, 9};

    FrequencyAxis(double lowHz, double highHz) {
        super("Frequency (Hz)");
        setRange(lowHz, highHz);
        Look.applyTo(this);
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D g2, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
        List<NumberTick> ticks = new ArrayList<>();
        for (double decade = 10; decade <= getUpperBound(); decade *= 10) {
            addTicks(ticks, TickType.MAJOR, decade, LABELLED);
            addTicks(ticks, TickType.MINOR, decade, GRID_ONLY);
        }
        return ticks;
    }

    private void addTicks(List<NumberTick> ticks, TickType type, double decade, double[] steps) {
        for (double step : steps) {
            double hz = decade * step;
            if (hz >= getLowerBound() * 0.9999 && hz <= getUpperBound() * 1.0001) {
                String label = type.equals(TickType.MAJOR) ? String.format(Locale.ROOT, "%.0f", hz) : "";
                ticks.add(new NumberTick(type, hz, label, TextAnchor.TOP_CENTER, TextAnchor.TOP_CENTER, 0));
            }
        }
    }
}
