package io.github.tapwright.chart;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;

/**
 * What a picture of an instrument's history shows: panels of figures over time, the humidity below, events as upright lines.
 *
 * @param title whose history
 * @param subtitles lines below the title
 * @param panels from the top, at least one
 * @param humidity relative humidity of the sittings, %, oldest first; maybe none
 * @param events what was done to the instrument
 * @param zone where the workshop is
 */
public record TrendPicture(
        String title,
        List<String> subtitles,
        List<Panel> panels,
        List<Dot> humidity,
        List<Happening> events,
        ZoneId zone)
        implements Picture {

    /** Refuses a picture of nothing. */
    public TrendPicture {
        subtitles = List.copyOf(subtitles);
        panels = List.copyOf(panels);
        humidity = List.copyOf(humidity);
        events = List.copyOf(events);
        if (panels.stream().allMatch(p -> p.lines().isEmpty())) {
            throw new IllegalArgumentException("a picture of a history needs a line");
        }
    }

    /**
     * Lines on one axis.
     *
     * @param axis what the axis says
     * @param lines any number
     */
    public record Panel(String axis, List<Line> lines) {

        /** Keeps a copy of the list. */
        public Panel {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One quantity.
     *
     * @param label what the legend calls it; the same label in two panels is drawn alike
     * @param style which colour, line and mark, from 0
     * @param corrected figures that are joined by a line
     * @param measured figures that stand beside them as hollow marks; maybe none
     */
    public record Line(String label, int style, List<Dot> corrected, List<Dot> measured) {

        /** Keeps copies of the lists. */
        public Line {
            corrected = List.copyOf(corrected);
            measured = List.copyOf(measured);
        }
    }

    /**
     * A figure at a time.
     *
     * @param at when
     * @param value in the panel's unit
     * @param halfWidth half the length of its bar, in the panel's unit; 0 for none
     */
    public record Dot(Instant at, double value, double halfWidth) {

        /**
         * A figure without a bar.
         *
         * @param at when
         * @param value in the panel's unit
         */
        public Dot(Instant at, double value) {
            this(at, value, 0);
        }
    }

    /**
     * Something done to the instrument.
     *
     * @param at when
     * @param label in a few words
     */
    public record Happening(Instant at, String label) {}
}
