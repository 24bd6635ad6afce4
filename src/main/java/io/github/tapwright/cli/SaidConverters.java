package io.github.tapwright.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.function.Function;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Read what may be said to be unknown. */
final class SaidConverters {

    private SaidConverters() {}

    private static <T> T orUnknown(String text, Function<String, T> reading) {
        try {
            return reading.apply(text);
        } catch (TypeConversionException e) {
            throw new TypeConversionException(e.getMessage() + ", nor the word unknown");
        }
    }

    /** Reads a text. */
    static final class Text implements ITypeConverter<Said<String>> {
        @Override
        public Said<String> convert(String text) {
            return Said.read(text, Function.identity());
        }
    }

    /** Reads a figure. */
    static final class Figure implements ITypeConverter<Said<Double>> {
        @Override
        public Said<Double> convert(String text) {
            return Said.read(text, known -> orUnknown(known, Decimals::decimal));
        }
    }

    /** Reads a number of things. */
    static final class Count implements ITypeConverter<Said<Integer>> {
        @Override
        public Said<Integer> convert(String text) {
            return Said.read(text, known -> orUnknown(known, Decimals::whole));
        }
    }

    /** Reads a day. */
    static final class Day implements ITypeConverter<Said<LocalDate>> {
        @Override
        public Said<LocalDate> convert(String text) {
            return Said.read(text, Day::day);
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
