package io.github.tapwright.cli;

import java.util.regex.Pattern;
import picocli.CommandLine.TypeConversionException;

/** Reads numbers, and refuses others in a maker's words. */
final class Decimals {

    /** Java reads 48F as 48 too, and a maker means Fahrenheit. */
    private static final Pattern FIGURE = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");

    private Decimals() {}

    /** Reads a figure. */
    static double decimal(String text) {
        try {
            return parsed(text);
        } catch (NumberFormatException e) {
            throw new TypeConversionException("'" + text + "' is no number such as 21.5; give it without its unit");
        }
    }

    /** Reads a figure within some longer word. */
    static double parsed(String text) {
        if (!FIGURE.matcher(text).matches()) {
            throw new NumberFormatException(text);
        }
        return Double.parseDouble(text);
    }

    /** Reads a number of things. */
    static int whole(String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            throw new TypeConversionException("'" + text + "' is no whole number such as 6");
        }
    }
}
