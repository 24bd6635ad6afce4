package io.github.tapwright.chart;

import io.github.tapwright.statistics.Figures;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** Decibels in steps of ten; room above the highest figure belongs to the names. */
final class LevelAxis extends NumberAxis {

    private static final long serialVersionUID = 1L;

    private final double highestFigureDb;

    LevelAxis(String label, double lowestDb, double highestDb, double highestFigureDb) {
        super(label);
        this.highestFigureDb = highestFigureDb;
        setRange(lowestDb, highestDb);
        Look.applyTo(this);
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D g2, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
        List<NumberTick> ticks = new ArrayList<>();
        for (double db = highestFigureDb; db >= getLowerBound(); db -= 10) {
            String label = Figures.text(db, 0);
            ticks.add(new NumberTick(db + 0.0, label, TextAnchor.CENTER_RIGHT, TextAnchor.CENTER_RIGHT, 0));
        }
        return ticks;
    }
}
