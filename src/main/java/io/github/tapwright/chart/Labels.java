package io.github.tapwright.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds a row for each label so that no label covers another or is crossed by another's leader line.
 *
 * <p>A label stands to the right of its leader. Labels are placed from left to right; each goes one row below
 * the lowest earlier label that reaches beyond its own left edge.
 */
final class Labels {

    private Labels() {}

    /** A label's extent along the axis, pixels. */
    record Extent(double left, double width) {

        /** To the right of its leader, or to the left of it where the picture ends. */
        static Extent within(double leader, double width, double end) {
            return new Extent(leader + width <= end ? leader : leader - width, width);
        }

        boolean reaches(double x) {
            return left + width > x;
        }
    }

    /**
     * The row of each label, 0 at the top.
     *
     * @param extents in order of their left edges
     */
    static List<Integer> rows(List<Extent> extents) {
        List<Integer> rows = new ArrayList<>();
        for (int i = 0; i < extents.size(); i++) {
            int row = 0;
            for (int earlier = 0; earlier < i; earlier++) {
                if (extents.get(earlier).reaches(extents.get(i).left())) {
                    row = Math.max(row, rows.get(earlier) + 1);
                }
            }
            rows.add(row);
        }
        return rows;
    }
}
