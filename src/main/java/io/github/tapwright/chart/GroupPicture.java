package io.github.tapwright.chart;

import java.util.List;
import java.util.Optional;

/**
 * What a picture of groups of instruments shows: the mean response of each in third octaves, with its band.
 *
 * @param title what was measured
 * @param subtitles lines below the title
 * @param curves at least one
 */
public record GroupPicture(String title, List<String> subtitles, List<Curve> curves) implements Picture {

    /** Refuses a picture of nothing. */
    public GroupPicture {
        subtitles = List.copyOf(subtitles);
        curves = List.copyOf(curves);
        if (curves.isEmpty()) {
            throw new IllegalArgumentException("a picture of groups needs a curve");
        }
    }

    /**
     * One group.
     *
     * @param label what the legend calls it
     * @param dots lowest frequency first, at least one
     */
    public record Curve(String label, List<Dot> dots) {

        /** Refuses a curve of nothing. */
        public Curve {
            dots = List.copyOf(dots);
            if (dots.isEmpty()) {
                throw new IllegalArgumentException("a curve without points cannot be drawn: " + label);
            }
        }
    }

    /**
     * One third octave.
     *
     * @param midHz middle of the band
     * @param levelDb mean
     * @param lowerDb lower end of its interval; empty if there is none
     * @param upperDb upper end; empty if there is none
     */
    public record Dot(double midHz, double levelDb, Optional<Double> lowerDb, Optional<Double> upperDb) {

        double lowest() {
            return lowerDb.orElse(levelDb);
        }

        double highest() {
            return upperDb.orElse(levelDb);
        }
    }
}
