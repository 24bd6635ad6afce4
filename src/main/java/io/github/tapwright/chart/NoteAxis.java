package io.github.tapwright.chart;

import io.github.tapwright.note.NoteName;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.TickType;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** A logarithmic axis that names notes: all of them where there is room, else the naturals, else the As and Es. */
final class NoteAxis extends LogAxis {

    private static final long serialVersionUID = 1L;

    private static final double ROOM_FOR_ONE = 30;

    private final double a4Hz;

    NoteAxis(double lowHz, double highHz, double a4Hz) {
        super(null);
        this.a4Hz = a4Hz;
        setRange(lowHz, highHz);
        Look.applyTo(this);
        setTickLabelPaint(Look.QUIET_INK);
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D g2, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
        double semitones = 12 * Math.log(getUpperBound() / getLowerBound()) / Math.log(2);
        double room = dataArea.getWidth() / semitones;
        List<NumberTick> ticks = new ArrayList<>();
        for (int semitone = -60; semitone <= 58; semitone++) {
            NoteName note = new NoteName(semitone);
            double hz = note.hz(a4Hz);
            if (hz >= getLowerBound() && hz <= getUpperBound() && hasRoom(note.toString(), room)) {
                ticks.add(new NumberTick(
                        TickType.MAJOR, hz, note.toString(), TextAnchor.BOTTOM_CENTER, TextAnchor.CENTER, 0));
            }
        }
        return ticks;
    }

    private static boolean hasRoom(String note, double semitonePixels) {
        if (semitonePixels >= ROOM_FOR_ONE) {
            return true;
        }
        boolean natural = note.indexOf('#') < 0;
        if (semitonePixels * 1.5 >= ROOM_FOR_ONE) {
            return natural;
        }
        boolean landmark = note.startsWith("A") || note.startsWith("E");
        return natural && (semitonePixels * 5 >= ROOM_FOR_ONE ? landmark : note.startsWith("A"));
    }
}
