package io.github.tapwright.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Turns a table into the text of a CSV file (RFC 4180: commas, quotes where needed, CRLF). */
final class CsvText {

    /** First characters that make a spreadsheet read a cell as a formula, ASCII and full width. Source: [OWASP-CSV]. */
    private static final String FORMULA_STARTS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private static final char MARK = '\'';

    private CsvText() {}

    /** A header line and one line for each thing. */
    static <T> String of(List<Field<T>> fields, List<T> things) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            printer.printRecord(fields.stream().map(Field::name));
            for (T thing : things) {
                printer.printRecord(fields.stream().map(f -> cell(f.read(thing))));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("text in memory cannot fail to be written", e);
        }
        return text.toString();
    }

    private static String cell(Optional<?> value) {
        Object content = value.isPresent() ? value.get() : "";
        if (content instanceof Number number) {
            return number.toString();
        }
        String text = content instanceof List<?> list
                ? list.stream().map(Object::toString).collect(Collectors.joining("; "))
                : content.toString();
        return defused(text);
    }

    /**
     * An apostrophe before a text no spreadsheet may run. A text that begins with an apostrophe itself gets one too, so that whoever
     * takes one apostrophe off every text that begins with one has the text as it was typed.
     */
    private static String defused(String text) {
        boolean marked = !text.isEmpty() && (text.charAt(0) == MARK || FORMULA_STARTS.indexOf(text.charAt(0)) >= 0);
        return marked ? MARK + text : text;
    }
}
