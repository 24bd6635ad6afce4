package io.github.tapwright.sitting;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;

/**
 * When a sitting took place, to the second or only to the day.
 *
 * @param instant the moment; where only the day is known, noon of that day where the workshop is
 * @param timeKnown whether the time of day was written down
 */
public record Moment(Instant instant, boolean timeKnown) {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuu-MM-dd");
    private static final DateTimeFormatter DAY_AND_TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");

    /**
     * A moment known with its time of day.
     *
     * @param instant the moment
     * @return the moment
     */
    public static Moment at(Instant instant) {
        return new Moment(instant, true);
    }

    /**
     * A day of which the time is not known.
     *
     * @param day the day
     * @param zone where the workshop is
     * @return noon of that day, marked as a day only
     */
    public static Moment on(LocalDate day, ZoneId zone) {
        return new Moment(day.atTime(LocalTime.NOON).atZone(zone).toInstant(), false);
    }

    /**
     * The moment as people read it: day and time, or the day alone.
     *
     * @param zone where the reader is
     * @return such as "2026-03-14 09:26" or "2026-03-14"
     */
    public String text(ZoneId zone) {
        return (timeKnown ? DAY_AND_TIME : DAY).format(instant.atZone(zone));
    }
}
