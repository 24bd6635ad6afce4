package io.github.tapwright.sitting;

import io.github.tapwright.instrument.ShopNumber;

/**
 * What the maker wrote down about a sitting and can correct.
 *
 * @param instrument whose sitting it was, by the number it has now
 * @param takenAt when the recordings were made
 * @param conditions all besides
 */
public record WrittenDown(ShopNumber instrument, Moment takenAt, Conditions conditions) {

    /**
     * What is written down about a sitting now.
     *
     * @param sitting which
     * @return what can be corrected of it
     */
    public static WrittenDown of(Sitting sitting) {
        return new WrittenDown(sitting.instrument(), sitting.takenAt(), sitting.conditions());
    }
}
