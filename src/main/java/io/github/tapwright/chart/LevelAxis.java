package io.github.tapwright.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** Decibels below the highest point; the room above 0 dB belongs to the names and has no figures. */
final class LevelAxis extends NumberAxis {

    private static final long serialVersionUID = 1L;

    LevelAxis(double lowestDb, double headroomDb) {
        super("Level (dB re highest point)");
        setRange(lowestDb, headroomDb);
        Look.applyTo(this);
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D g2, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
        List<NumberTick> ticks = new ArrayList<>();
        for (double db = 0; db >= getLowerBound(); db -= 10) {
            String label = String.format(Locale.ROOT, "%.0f", db).replace('-', '−');
            ticks.add(new NumberTick(db + 0.0, label, TextAnchor.CENTER_RIGHT, TextAnchor.CENTER_RIGHT, 0));
        }
        return ticks;
    }
}
