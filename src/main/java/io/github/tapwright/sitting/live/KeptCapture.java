package io.github.tapwright.sitting.live;

import io.github.tapwright.sitting.Sitting;

/**
 * What became of a recording that was to be kept.
 *
 * @param sitting the sitting that holds it
 * @param before whether the sitting had been made before, by a program that was stopped on the way or by another at the
 *     same moment; nothing was added or changed then
 */
public record KeptCapture(Sitting sitting, boolean before) {

    /**
     * What the maker is told.
     *
     * @return one sentence or two
     */
    public String words() {
        return before
                ? "Sitting " + sitting.id() + " of instrument " + sitting.instrument()
                        + " holds this recording already,"
                        + " so none was added; if what is written down there is not right, correct that sitting"
                : "Kept as sitting " + sitting.id();
    }
}
