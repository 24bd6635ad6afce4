package io.github.tapwright.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * What was said about something that may be unknown: nothing at all, what it is, or that nobody knows it.
 *
 * @param isSaid whether it was spoken of
 * @param value what it is; empty if it is unknown or was not spoken of
 */
record Said<T>(boolean isSaid, Optional<T> value) {

    /** What takes back what was written down, here and in what is printed. */
    static final String UNKNOWN = "unknown";

    /** Nothing was said. */
    static <T> Said<T> nothing() {
        return new Said<>(false, Optional.empty());
    }

    /** Reads "unknown", an empty text, which means the same, or a value. */
    static <T> Said<T> read(String text, Function<String, T> reading) {
        return new Said<>(true, isUnknown(text) ? Optional.empty() : Optional.of(reading.apply(text)));
    }

    static boolean isUnknown(String text) {
        return text.isBlank() || text.strip().equalsIgnoreCase(UNKNOWN);
    }

    private static <T> T orUnknown(String text, Function<String, T> reading) {
        try {
            return reading.apply(text);
        } catch (TypeConversionException e) {
            throw new TypeConversionException(e.getMessage() + ", nor the word unknown");
        }
    }

    /** What holds now: what was said, else what was known before. */
    Optional<T> over(Optional<T> before) {
        return isSaid ? value : before;
    }

    /** Reads a text. */
    static final class Text implements ITypeConverter<Said<String>> {
        @Override
        public Said<String> convert(String text) {
            return read(text, Function.identity());
        }
    }

    /** Reads a figure. */
    static final class Figure implements ITypeConverter<Said<Double>> {
        @Override
        public Said<Double> convert(String text) {
            return read(text, known -> orUnknown(known, Decimals::decimal));
        }
    }

    /** Reads a number of things. */
    static final class Count implements ITypeConverter<Said<Integer>> {
        @Override
        public Said<Integer> convert(String text) {
            return read(text, known -> orUnknown(known, Decimals::whole));
        }
    }

    /** Reads a day. */
    static final class Day implements ITypeConverter<Said<LocalDate>> {
        @Override
        public Said<LocalDate> convert(String text) {
            return read(text, Day::day);
        }

        private static LocalDate day(String text) {
            try {
                return LocalDate.parse(text);
            } catch (DateTimeParseException e) {
                throw new TypeConversionException("'" + text + "' is no day such as 2026-03-14, nor the word unknown");
            }
        }
    }
}
