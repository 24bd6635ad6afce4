package io.github.tapwright.chart;

import java.util.List;

/**
 * Single figures in groups: every instrument's own point, so that nobody has to believe a mean.
 *
 * @param title what is shown
 * @param subtitles lines below the title
 * @param axis what the figures are, with their unit
 * @param groups at least one, from the left
 */
public record PointsPicture(String title, List<String> subtitles, String axis, List<Group> groups) implements Picture {

    /** Refuses a picture of nothing. */
    public PointsPicture {
        subtitles = List.copyOf(subtitles);
        groups = List.copyOf(groups);
        if (groups.stream().allMatch(g -> g.points().isEmpty())) {
            throw new IllegalArgumentException("a picture needs a point");
        }
    }

    /**
     * One group.
     *
     * @param name what it is called
     * @param points its figures
     */
    public record Group(String name, List<Point> points) {

        /** Keeps a copy. */
        public Group {
            points = List.copyOf(points);
        }
    }

    /**
     * One figure.
     *
     * @param label whose it is
     * @param value the figure
     */
    public record Point(String label, double value) {}
}
