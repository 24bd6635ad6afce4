package io.github.tapwright.desktop.notes;

import io.github.tapwright.note.run.Fret;
import java.util.Optional;

/**
 * One place of a map.
 *
 * @param place string and fret
 * @param note which note of the run, from 0
 * @param text the figure, or a dash
 * @param share where the figure lies between the least (0) and the most (1) of the map; empty without a figure
 * @param dead why this note is framed: dies away much faster than its neighbours
 * @param spoken all of it in words, for screen readers and as help
 */
public record BoardCell(
        Fret place, int note, String text, Optional<Double> share, Optional<String> dead, String spoken) {}
