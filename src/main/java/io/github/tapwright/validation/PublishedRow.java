package io.github.tapwright.validation;

import java.util.Map;

/**
 * One row of a table of published values.
 *
 * @param title what the row is about, for the name of the test
 * @param cells by the column's name
 */
public record PublishedRow(String title, Map<String, String> cells) {

    /** Refuses a row of which nobody knows where it comes from. */
    public PublishedRow {
        cells = Map.copyOf(cells);
        if (cells.getOrDefault("source", "").isBlank()) {
            throw new IllegalArgumentException("row " + title + " names no source");
        }
    }

    /**
     * A word.
     *
     * @param column its name
     * @return the cell
     * @throws IllegalArgumentException if there is no such column
     */
    public String text(String column) {
        String text = cells.get(column);
        if (text == null) {
            throw new IllegalArgumentException("no column " + column + " in " + cells.keySet());
        }
        return text;
    }

    /**
     * A number.
     *
     * @param column its name
     * @return in the unit the column's name says
     */
    public double number(String column) {
        return Double.parseDouble(text(column));
    }

    /**
     * A whole number.
     *
     * @param column its name
     * @return the number
     */
    public int whole(String column) {
        return Integer.parseInt(text(column));
    }

    @Override
    public String toString() {
        return title;
    }
}
