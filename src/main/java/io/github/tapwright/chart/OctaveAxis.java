package io.github.tapwright.chart;

import io.github.tapwright.level.band.Band;
import io.github.tapwright.level.band.Bandwidth;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.TickType;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** A logarithmic axis with the names of the octave bands at their middles. */
final class OctaveAxis extends LogAxis {

    private static final long serialVersionUID = 1L;

    private static final double HIGHEST_RATE_HZ = 1e6;

    OctaveAxis(double lowHz, double highHz) {
        super("Frequency (Hz)");
        setRange(lowHz, highHz);
        Look.applyTo(this);
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D g2, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
        List<NumberTick> ticks = new ArrayList<>();
        for (Band band : Bandwidth.OCTAVE.bandsWithin(HIGHEST_RATE_HZ)) {
            if (getRange().contains(band.midHz())) {
                String name = BigDecimal.valueOf(band.nominalHz())
                        .stripTrailingZeros()
                        .toPlainString();
                ticks.add(new NumberTick(
                        TickType.MAJOR, band.midHz(), name, TextAnchor.TOP_CENTER, TextAnchor.TOP_CENTER, 0));
            }
        }
        return ticks;
    }
}
