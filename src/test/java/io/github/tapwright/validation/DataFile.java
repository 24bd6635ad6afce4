package io.github.tapwright.validation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A data set under {@code validation}: a line of column names, then numbers. Its source stands in the table beside it. */
public final class DataFile {

    private final List<String> names;
    private final List<String[]> rows;

    private DataFile(List<String> names, List<String[]> rows) {
        this.names = names;
        this.rows = rows;
    }

    /**
     * Reads it.
     *
     * @param file path under {@code validation}
     */
    public static DataFile read(String file) {
        try {
            List<String> lines = Files.readAllLines(Path.of("validation").resolve(file));
            return new DataFile(
                    List.of(lines.get(0).split(",", -1)),
                    lines.stream().skip(1).map(line -> line.split(",", -1)).toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The numbers of a column. */
    public double[] column(String name) {
        int index = names.indexOf(name);
        return rows.stream().mapToDouble(row -> Double.parseDouble(row[index])).toArray();
    }

    /** The column y, group by group in the order of the file. */
    public List<double[]> groups() {
        Map<String, List<Double>> groups = rows.stream()
                .collect(Collectors.groupingBy(
                        row -> row[names.indexOf("group")],
                        LinkedHashMap::new,
                        Collectors.mapping(row -> Double.valueOf(row[names.indexOf("y")]), Collectors.toList())));
        return groups.values().stream()
                .map(values -> values.stream().mapToDouble(v -> v).toArray())
                .toList();
    }

    /** A column of words. */
    public List<String> words(String name) {
        int index = names.indexOf(name);
        return rows.stream().map(row -> row[index]).toList();
    }
}
