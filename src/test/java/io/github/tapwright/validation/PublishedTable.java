package io.github.tapwright.validation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/** Tables of published values under the repository's folder {@code validation}. */
public final class PublishedTable {

    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();

    private PublishedTable() {}

    /**
     * The rows of a table, each with its source.
     *
     * @param file path under {@code validation}
     */
    public static Stream<PublishedRow> rows(String file) {
        try (CSVParser parser = CSVParser.parse(Path.of("validation", file), StandardCharsets.UTF_8, FORMAT)) {
            List<PublishedRow> rows = parser.stream()
                    .map(r -> new PublishedRow(r.get(0), r.toMap()))
                    .toList();
            if (rows.isEmpty()) {
                throw new IllegalStateException(file + " has no rows");
            }
            return rows.stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
