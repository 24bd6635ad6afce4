package io.github.tapwright.chart;

import java.util.List;

/**
 * What a picture of the fingerboard shows: maps of string and fret, one above the other.
 *
 * @param title what was measured
 * @param subtitles lines below the title
 * @param stringCount how many strings the guitar has; string 1, the highest, is drawn on top
 * @param maps at least one
 */
public record FingerboardPicture(String title, List<String> subtitles, int stringCount, List<FretMap> maps)
        implements Picture {

    /** Refuses a picture of nothing. */
    public FingerboardPicture {
        subtitles = List.copyOf(subtitles);
        maps = List.copyOf(maps);
        if (maps.isEmpty() || maps.stream().anyMatch(m -> m.cells().isEmpty())) {
            throw new IllegalArgumentException("a picture of the fingerboard needs maps with notes in them");
        }
    }

    /**
     * One quantity over the fingerboard.
     *
     * @param title the quantity with its unit
     * @param places decimal places of the figures
     * @param leastRange from palest to darkest is at least so much, so that nothing looks like a difference that is none
     * @param cells one for each place that has a value
     */
    public record FretMap(String title, int places, double leastRange, List<Cell> cells) {

        /** Keeps a copy of the list. */
        public FretMap {
            cells = List.copyOf(cells);
        }
    }

    /**
     * The value at one place.
     *
     * @param string from 1
     * @param fret from 0
     * @param value finite
     * @param marked whether it is framed, because it stands out
     */
    public record Cell(int string, int fret, double value, boolean marked) {}

    int highestFret() {
        return maps.stream()
                .flatMap(m -> m.cells().stream())
                .mapToInt(Cell::fret)
                .max()
                .orElse(0);
    }
}
