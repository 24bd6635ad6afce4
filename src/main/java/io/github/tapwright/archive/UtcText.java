package io.github.tapwright.archive;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;

/** Instants as UTC text of one width, such as 2026-03-14T09:26:53.000000000Z, so that text order is time order. */
final class UtcText {

    private static final DateTimeFormatter FORMAT =
            new DateTimeFormatterBuilder().appendInstant(9).toFormatter();

    private UtcText() {}

    static String of(Instant instant) {
        return FORMAT.format(instant);
    }

    static Instant parse(String text) {
        return Instant.parse(text);
    }
}
