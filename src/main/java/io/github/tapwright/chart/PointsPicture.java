package io.github.tapwright.chart;

import java.util.List;
import java.util.Optional;

/**
 * What a picture of every instrument of some groups shows: one point an instrument, each in a column of its own that all
 * panels share, with the mean of each group and its interval.
 *
 * @param title what was measured
 * @param subtitles lines below the title
 * @param groups from the left, at least one
 * @param panels from the top, at least one
 */
public record PointsPicture(String title, List<String> subtitles, List<Group> groups, List<Panel> panels)
        implements Picture {

    /** Refuses a picture of nothing, and points of nobody. */
    public PointsPicture {
        subtitles = List.copyOf(subtitles);
        groups = List.copyOf(groups);
        panels = List.copyOf(panels);
        if (groups.isEmpty() || panels.isEmpty()) {
            throw new IllegalArgumentException("a picture of instruments needs a group and a panel");
        }
        for (Panel panel : panels) {
            if (panel.clusters().size() != groups.size()) {
                throw new IllegalArgumentException("every group needs its place in every panel");
            }
            for (int i = 0; i < groups.size(); i++) {
                int members = groups.get(i).members().size();
                if (panel.clusters().get(i).points().stream().anyMatch(p -> p.member() >= members)) {
                    throw new IllegalArgumentException("a point belongs to no instrument of "
                            + groups.get(i).label());
                }
            }
        }
    }

    /**
     * One group.
     *
     * @param label what the legend calls it
     * @param members what stands below each column, from the left
     */
    public record Group(String label, List<String> members) {

        /** Keeps a copy of the list. */
        public Group {
            members = List.copyOf(members);
        }
    }

    /**
     * One quantity.
     *
     * @param axis what the axis says
     * @param clusters one for each group, in the same order
     */
    public record Panel(String axis, List<Cluster> clusters) {

        /** Refuses a panel without a point. */
        public Panel {
            clusters = List.copyOf(clusters);
            if (clusters.stream().allMatch(c -> c.points().isEmpty())) {
                throw new IllegalArgumentException("a panel without points cannot be drawn: " + axis);
            }
        }
    }

    /**
     * The figures of a group's instruments.
     *
     * @param points any number, at most one a member
     * @param mean their mean; empty if there is none
     */
    public record Cluster(List<Point> points, Optional<Mean> mean) {

        /** Nobody of the group has the figure. */
        public static final Cluster EMPTY = new Cluster(List.of(), Optional.empty());

        /** Keeps a copy of the list. */
        public Cluster {
            points = List.copyOf(points);
        }
    }

    /**
     * One instrument.
     *
     * @param member which of its group, from 0
     * @param value in the panel's unit
     */
    public record Point(int member, double value) {}

    /**
     * A mean.
     *
     * @param value in the panel's unit
     * @param lower lower end of its interval; empty if there is none
     * @param upper upper end; empty if there is none
     */
    public record Mean(double value, Optional<Double> lower, Optional<Double> upper) {}
}
