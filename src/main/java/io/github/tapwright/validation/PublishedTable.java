package io.github.tapwright.validation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Tables of published values: the project's folder {@code validation}, shipped with the program. */
public final class PublishedTable {

    private PublishedTable() {}

    /**
     * The rows of a table, each with its source.
     *
     * @param file path under {@code validation}
     * @return in the order of the file, at least one
     * @throws IllegalArgumentException if there is no such table, or a row is too short or names no source
     */
    public static Stream<PublishedRow> rows(String file) {
        List<List<String>> lines = TableText.rows(file);
        if (lines.size() < 2) {
            throw new IllegalArgumentException(file + " has no rows");
        }
        List<String> names = lines.get(0);
        return lines.stream().skip(1).map(cells -> row(names, cells));
    }

    /**
     * The one row that holds a value.
     *
     * @param file path under {@code validation}
     * @param key column and text that choose it, one after the other
     * @return the first row that has them all
     * @throws IllegalArgumentException if there is none
     */
    public static PublishedRow row(String file, String... key) {
        return rows(file)
                .filter(r -> {
                    for (int i = 0; i < key.length; i += 2) {
                        if (!r.text(key[i]).equals(key[i + 1])) {
                            return false;
                        }
                    }
                    return true;
                })
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(file + " lacks " + String.join(" ", key)));
    }

    private static PublishedRow row(List<String> names, List<String> cells) {
        if (cells.size() != names.size()) {
            throw new IllegalArgumentException(
                    "row " + cells.get(0) + " has " + cells.size() + " cells, not " + names.size());
        }
        Map<String, String> byName = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
            byName.put(names.get(i), cells.get(i));
        }
        return new PublishedRow(cells.get(0), byName);
    }
}
