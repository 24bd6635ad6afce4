package io.github.tapwright.audio;

import java.util.Locale;

/** Numbers as they stand in notices and refusals. */
final class Wording {

    private Wording() {}

    /** As short as it can be said without changing it: "44100", "0.5". */
    static String number(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? Long.toString((long) value)
                : Double.toString(value);
    }

    /** A time for people: one decimal from a second up, four below. */
    static String seconds(double seconds) {
        return String.format(Locale.ROOT, seconds < 1 ? "%.4f s" : "%.1f s", seconds);
    }
}
