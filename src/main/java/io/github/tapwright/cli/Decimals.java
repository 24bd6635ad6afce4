package io.github.tapwright.cli;

import picocli.CommandLine.TypeConversionException;

/** Reads numbers, and refuses others in a maker's words. */
final class Decimals {

    private Decimals() {}

    /** Reads a figure. */
    static double decimal(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw new TypeConversionException("'" + text + "' is no number such as 21.5");
        }
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
