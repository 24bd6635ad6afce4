package io.github.tapwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A calm table: columns side by side, figures to the right, the last column as long as it needs to be. */
final class Table {

    private static final String GAP = "   ";

    private final List<List<String>> rows = new ArrayList<>();

    Table(String... headers) {
        rows.add(List.of(headers));
    }

    void add(String... cells) {
        if (cells.length != rows.get(0).size()) {
            throw new IllegalArgumentException("a row needs " + rows.get(0).size() + " cells, got " + cells.length);
        }
        rows.add(List.of(cells));
    }

    /** The lines of the table, its header first. */
    List<String> lines() {
        List<Integer> widths = IntStream.range(0, rows.get(0).size())
                .mapToObj(c ->
                        rows.stream().mapToInt(r -> r.get(c).length()).max().orElse(0))
                .toList();
        return rows.stream().map(row -> line(row, widths)).toList();
    }

    private static String line(List<String> row, List<Integer> widths) {
        StringBuilder line = new StringBuilder("  ");
        int last = row.size() - 1;
        for (int c = 0; c < last; c++) {
            String padding = " ".repeat(widths.get(c) - row.get(c).length());
            line.append(padding).append(row.get(c)).append(GAP);
        }
        return line.append(row.get(last)).toString().stripTrailing();
    }
}
