package io.github.tapwright.validation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A data set under {@code validation}: a line of column names, then numbers. Its source stands in the table beside it. */
public final class DataFile {

    private final List<String> names;
    private final List<List<String>> rows;

    private DataFile(List<String> names, List<List<String>> rows) {
        this.names = names;
        this.rows = rows;
    }

    /**
     * Reads it.
     *
     * @param file path under {@code validation}
     * @return the data
     * @throws IllegalArgumentException if there is no such file
     */
    public static DataFile read(String file) {
        List<List<String>> lines = TableText.rows(file);
        return new DataFile(lines.get(0), lines.subList(1, lines.size()));
    }

    /**
     * The numbers of a column.
     *
     * @param name the column's
     * @return one for each row
     */
    public double[] column(String name) {
        int index = names.indexOf(name);
        return rows.stream()
                .mapToDouble(row -> Double.parseDouble(row.get(index)))
                .toArray();
    }

    /**
     * The column y, group by group.
     *
     * @return in the order of the file
     */
    public List<double[]> groups() {
        Map<String, List<Double>> groups = rows.stream()
                .collect(Collectors.groupingBy(
                        row -> row.get(names.indexOf("group")),
                        LinkedHashMap::new,
                        Collectors.mapping(row -> Double.valueOf(row.get(names.indexOf("y"))), Collectors.toList())));
        return groups.values().stream()
                .map(values -> values.stream().mapToDouble(v -> v).toArray())
                .toList();
    }

    /**
     * A column of words.
     *
     * @param name the column's
     * @return one for each row
     */
    public List<String> words(String name) {
        int index = names.indexOf(name);
        return rows.stream().map(row -> row.get(index)).toList();
    }
}
