package io.github.tapwright.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** Names side by side; an empty name is a gap. Where they would run into each other they stand upright. */
final class NameAxis extends NumberAxis {

    private static final long serialVersionUID = 1L;
    private static final double MARGIN = 0.7;
    private static final double AIR = 6;

    private final ArrayList<String> names;

    NameAxis(String label, List<String> names, int columns) {
        super(label);
        this.names = new ArrayList<>(names);
        setRange(-MARGIN, columns - 1 + MARGIN);
        Look.applyTo(this);
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D g2, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
        double widest =
                names.stream().mapToDouble(n -> Look.width(Look.AXIS, n)).max().orElse(0);
        boolean upright = widest + AIR > dataArea.getWidth() / getRange().getLength();
        // The axis makes room below itself by this.
        setVerticalTickLabels(upright);
        TextAnchor anchor = upright ? TextAnchor.CENTER_RIGHT : TextAnchor.TOP_CENTER;
        List<NumberTick> ticks = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            if (!names.get(i).isEmpty()) {
                ticks.add(new NumberTick((double) i, names.get(i), anchor, anchor, upright ? -Math.PI / 2 : 0));
            }
        }
        return ticks;
    }
}
