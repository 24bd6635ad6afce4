package io.github.tapwright.comparison;

import io.github.tapwright.climate.HumiditySensitivity;
import io.github.tapwright.climate.ShopWindow;

/**
 * What is known about a workshop besides the sittings themselves.
 *
 * @param spread how far setting up again moves figures of taps
 * @param plucks how far the level of a whole sitting of plucks scatters where they are plucked again, dB
 * @param window the humidity the workshop keeps
 * @param sensitivity how far humidity moves the resonances of the instrument in question
 */
public record BenchKnowledge(
        SetUpSpread spread, KnownScatter plucks, ShopWindow window, HumiditySensitivity sensitivity) {

    /**
     * What is known where no pluck is in question.
     *
     * @param spread how far setting up again moves figures of taps
     * @param window the humidity the workshop keeps
     * @param sensitivity how far humidity moves the resonances of the instrument in question
     */
    public BenchKnowledge(SetUpSpread spread, ShopWindow window, HumiditySensitivity sensitivity) {
        this(spread, SetUpSpread.USUAL.level(), window, sensitivity);
    }

    /**
     * What one sitting more does to a subject.
     *
     * @param subject plucks, or a quantity of a resonance
     * @return the spread its figures have; levels of plucks have that of plucking again
     */
    public SetUpSpread spread(Subject subject) {
        return subject.equals(Subject.PLUCKS) ? spread.withLevel(plucks) : spread;
    }
}
